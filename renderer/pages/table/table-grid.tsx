import { useVirtualizer } from '@tanstack/react-virtual'
import { type ClipboardEvent, type Dispatch, type KeyboardEvent, useEffect, useRef, useState } from 'react'
import type { TableRow } from '../../../core/exchange/pasted-table.ts'
import type { TableColumn } from '../../../core/exchange/table-column.ts'
import { wordRowFault } from '../../../core/wording/table-problem.ts'
import { keysOf } from '../../components/commands.ts'
import { rootPx } from '../../components/once-a-drawing.ts'
import { cellSentence } from './cell-text.ts'
import { placeByKey } from './grid-keys.ts'
import { TableHeads } from './table-heads.tsx'
import { idOfPlace, TableLine } from './table-line.tsx'
import type { Place, Row, TableAction } from './table-state.ts'

const rowRem = 2.9

const widthOf = ({ field }: TableColumn): string =>
  field === 'designation' || field === 'maker' || field === 'notes' || field === 'alsoKnownAs' ? '11rem' : '9.4rem'

/** The grid, which is to be written in as soon as it has the focus. */
export const focusGrid = (): void => document.getElementById('table-grid')?.focus()

interface TableGridProps {
  readonly columns: readonly TableColumn[]
  readonly rows: readonly Row[]
  readonly read: readonly (TableRow | null)[]
  readonly at: Place
  readonly dispatch: Dispatch<TableAction>
  readonly takePaste: (text: string) => void
  readonly nextRefused: () => void
  readonly leave: () => void
}

/** The table as it is entered: each cell as typed, with what it was read as, and the refused ones marked. */
export const TableGrid = ({ columns, rows, read, at, dispatch, takePaste, nextRefused, leave }: TableGridProps) => {
  const scroller = useRef<HTMLDivElement>(null)
  const head = useRef<HTMLTableRowElement>(null)
  const [editing, setEditing] = useState<{ text: string; whole: boolean } | null>(null)
  const [headPx, setHeadPx] = useState(0)
  const count = rows.length + 1
  const virtual = useVirtualizer({
    count,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowRem * rootPx(),
    overscan: 10,
    scrollMargin: headPx,
    scrollPaddingStart: headPx,
  })
  useEffect(() => {
    const seen = new ResizeObserver(() => {
      setHeadPx(head.current?.offsetHeight ?? 0)
      virtual.measure()
    })
    if (head.current) seen.observe(head.current)
    return () => seen.disconnect()
  }, [virtual])
  useEffect(() => {
    virtual.scrollToIndex(at.row)
    const frame = requestAnimationFrame(() =>
      document.getElementById(idOfPlace(at))?.scrollIntoView({ block: 'nearest', inline: 'nearest' }),
    )
    return () => cancelAnimationFrame(frame)
  }, [virtual, at])

  const typedAt = ({ row, column }: Place) => rows[row]?.[column] ?? ''
  const extent = () => ({
    rows: count,
    columns: columns.length,
    pageRows: Math.max(1, Math.floor((scroller.current?.clientHeight ?? 0) / (rowRem * rootPx())) - 2),
  })
  const commit = (text: string, to: Place = at) => {
    setEditing(null)
    dispatch({ type: 'write', place: at, text, to })
  }

  const onKeyDown = (event: KeyboardEvent<HTMLTableElement>) => {
    if (event.target !== event.currentTarget) return
    const shift = event.shiftKey && event.key.length > 1 ? 'Shift+' : ''
    const keys = `${shift}${keysOf(event.nativeEvent)}`
    const to = placeByKey(keys, at, extent())
    if (to) dispatch({ type: 'go', to })
    else if (keys === 'F2') setEditing({ text: typedAt(at), whole: true })
    else if (keys === 'F8') nextRefused()
    else if (keys === 'Escape') leave()
    else if (keys === 'Delete' || keys === 'Backspace') dispatch({ type: 'write', place: at, text: '' })
    else if (keys === 'Ctrl+Backspace') dispatch({ type: 'remove-row', row: at.row })
    else if (event.key === 'Dead' || event.key === 'Process') {
      // The letter is still being put together: the cell is opened, and the letter comes into it by itself.
      setEditing({ text: '', whole: false })
      return
    } else if (event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey)
      setEditing({ text: event.key, whole: false })
    else return
    event.preventDefault()
  }
  const onPaste = (event: ClipboardEvent) => {
    const text = event.clipboardData.getData('text/plain')
    // A text of one cell, pasted while a cell is open, belongs to that cell.
    if (editing && !/[\t\n]/.test(text.trim())) return
    event.preventDefault()
    setEditing(null)
    takePaste(text)
    focusGrid()
  }

  const here = read[at.row]
  const cellHere = here?.cells.find(({ column }) => column === at.column)
  const fieldHere = columns[at.column]?.field
  const sentence =
    cellHere && fieldHere
      ? cellSentence(fieldHere, typedAt(at), cellHere)
      : here?.refused
        ? wordRowFault(here.refused)
        : ''
  const gridTemplateColumns = `3.2rem ${columns.map(widthOf).join(' ')}`

  return (
    <div className="table-sheet">
      <div ref={scroller} className="table-scroller">
        <table
          id="table-grid"
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table that is written in is a grid
          role="grid"
          aria-label="Table of calibers"
          aria-describedby="table-hint"
          aria-rowcount={count + 1}
          aria-colcount={columns.length + 1}
          aria-activedescendant={editing ? undefined : idOfPlace(at)}
          tabIndex={0}
          className="table-grid"
          onKeyDown={onKeyDown}
          onPaste={onPaste}
        >
          <thead>
            <tr ref={head} aria-rowindex={1} style={{ gridTemplateColumns }}>
              <th scope="col" aria-colindex={1} className="table-number">
                <span className="out-of-sight">Row</span>
              </th>
              <TableHeads columns={columns} dispatch={dispatch} />
            </tr>
          </thead>
          <tbody style={{ height: virtual.getTotalSize() }}>
            {virtual.getVirtualItems().map(({ index, start, size }) => (
              <TableLine
                key={index}
                index={index}
                last={index === rows.length}
                columns={columns}
                typed={rows[index] ?? []}
                read={read[index] ?? null}
                at={index === at.row ? at.column : null}
                editing={index === at.row ? editing : null}
                style={{ gridTemplateColumns, height: size, transform: `translateY(${start - headPx}px)` }}
                onTouch={(column) => {
                  if (index === at.row && column === at.column) {
                    setEditing(editing ?? { text: typedAt(at), whole: true })
                    return
                  }
                  dispatch({ type: 'go', to: { row: index, column } })
                  focusGrid()
                }}
                onCommit={(text, keys) => {
                  commit(text, keys === '' ? undefined : (placeByKey(keys, at, { ...extent(), rows: count + 1 }) ?? at))
                  if (keys !== '') focusGrid()
                }}
                onCancel={() => {
                  setEditing(null)
                  focusGrid()
                }}
              />
            ))}
          </tbody>
        </table>
      </div>
      <p className="table-foot" role="status" data-refused={cellHere?.read.ok === false}>
        {sentence && `Row ${at.row + 1}. ${sentence}`}
      </p>
    </div>
  )
}
