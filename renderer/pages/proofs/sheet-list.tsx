import { useVirtualizer } from '@tanstack/react-virtual'
import { type KeyboardEvent, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react'
import type { ProofLine } from '../../../core/api/contract.ts'
import { rootPx } from '../../components/once-a-drawing.ts'
import { usePrinting } from '../../components/use-printing.ts'
import { walkLines } from '../../components/walk-lines.ts'
import { GroupHead } from './group-head.tsx'
import type { Proved } from './prove-library.ts'
import { lineKey, SheetLine } from './sheet-line.tsx'
import { sheetPlace } from './sheet-place.ts'
import type { Grouping, SheetGroup } from './sheet-rows.ts'

type Row = { readonly key: string; readonly group: SheetGroup } | { readonly key: string; readonly line: ProofLine }

const rowsOf = (groups: readonly SheetGroup[]): readonly Row[] =>
  groups.flatMap((group) => [
    { key: `group ${group.key}`, group },
    ...group.lines.map((line) => ({ key: lineKey(line), line })),
  ])

/** Rows that are put on paper: more would be a book. */
const mostOnPaper = 2000

interface SheetListProps {
  readonly groups: readonly SheetGroup[]
  readonly by: Grouping
  readonly counts: Proved['counts']
}

/** The groups with their lines; on the page are those in sight, on paper all of them. */
export const SheetList = ({ groups, by, counts }: SheetListProps) => {
  const list = useRef<HTMLDivElement>(null)
  const rows = useMemo(() => rowsOf(groups), [groups])
  const printing = usePrinting()
  const [above, setAbove] = useState(0)
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => document.getElementById('main'),
    getItemKey: (index) => rows[index]?.key ?? index,
    estimateSize: (index) => (rows[index] && 'group' in rows[index] ? 3.6 : 5.5) * rootPx(),
    overscan: 8,
    scrollMargin: above,
    initialOffset: sheetPlace.scrolled,
    initialMeasurementsCache: sheetPlace.measured,
  })
  // What stands above the list changes its height with the text size, the width and what is said there.
  useLayoutEffect(() => {
    const page = list.current?.parentElement
    if (!page) return
    const seen = new ResizeObserver(() => setAbove(list.current?.offsetTop ?? 0))
    for (const part of page.children) seen.observe(part)
    return () => seen.disconnect()
  }, [])
  useLayoutEffect(
    () => () => {
      sheetPlace.scrolled = document.getElementById('main')?.scrollTop ?? 0
      sheetPlace.measured = virtual.measurementsCache
    },
    [virtual],
  )
  const lines = () => [...(list.current?.querySelectorAll<HTMLElement>('.sheet-line') ?? [])]
  const arrived = useRef(false)
  // The focus goes to the line that was in hand, once it is on the page, or to the first; not away from a filter.
  useEffect(() => {
    if (arrived.current || list.current?.parentElement?.contains(document.activeElement)) return
    const at = rows.findIndex(({ key }) => key === sheetPlace.line)
    const wanted = at < 0 ? lines()[0] : lines().find(({ dataset }) => dataset.line === sheetPlace.line)
    if (wanted) {
      arrived.current = true
      wanted.focus({ preventScroll: true })
    } else if (at >= 0) virtual.scrollToIndex(at, { align: 'center' })
  })

  const show = (row: Row) =>
    'group' in row ? (
      <GroupHead group={row.group} counts={by === 'proof' ? counts.get(row.group.key) : undefined} />
    ) : (
      <SheetLine
        line={row.line}
        by={by}
        onFocus={() => {
          sheetPlace.line = row.key
        }}
      />
    )
  const walk = (event: KeyboardEvent) => walkLines(event, lines())
  if (printing)
    return (
      <div ref={list} className="sheet-list">
        {rows.slice(0, mostOnPaper).map((row) => (
          <div key={row.key} className="sheet-row">
            {show(row)}
          </div>
        ))}
        {rows.length > mostOnPaper && (
          <p>The rest is not printed: {rows.length - mostOnPaper} lines. Narrow the sheet to print them.</p>
        )}
      </div>
    )
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the arrow keys go along the lines, which are links
    <div ref={list} className="sheet-list" style={{ height: virtual.getTotalSize() }} onKeyDown={walk}>
      {virtual.getVirtualItems().map(({ key, index, start }) => {
        const row = rows[index]
        return row === undefined ? null : (
          <div
            key={key}
            ref={virtual.measureElement}
            data-index={index}
            className="sheet-row in-place"
            style={{ transform: `translateY(${start - above}px)` }}
          >
            {show(row)}
          </div>
        )
      })}
    </div>
  )
}
