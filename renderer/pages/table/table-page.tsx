import { useEffect, useReducer, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { Source } from '../../../core/exchange/library-file.ts'
import { usualColumns } from '../../../core/exchange/table-column.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { isCaliberField } from '../../../core/record/entry.ts'
import { useChange, useSources } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { PasteField } from './paste-field.tsx'
import { splitPasted } from './split-pasted.ts'
import { TableBar } from './table-bar.tsx'
import { keepTable, keptTable } from './table-draft.ts'
import { focusGrid, TableGrid } from './table-grid.tsx'
import { useTableReading } from './table-reading.ts'
import { TableReview } from './table-review.tsx'
import { mostRows, type Place, tableReducer } from './table-state.ts'
import { type Stored, TableStored } from './table-stored.tsx'
import { useTableStore } from './use-table-store.ts'
import './table.css'

/** The columns that a source prints, with the designation in front where it does not name it. */
const fieldsOf = (source: Source | undefined): readonly CaliberFieldKey[] => {
  const fields = (source?.columns ?? []).filter(isCaliberField)
  if (fields.length === 0) return usualColumns
  return fields.includes('designation') ? fields : ['designation', ...fields.filter((key) => key !== 'maker')]
}

/** Entry of a table that a handbook prints: typed in a grid or pasted, looked over, and stored in one step. */
export const TablePage = () => {
  const [, go] = useLocation()
  const [state, dispatch] = useReducer(tableReducer, null, keptTable)
  const [stored, setStored] = useState<Stored | null>(null)
  const sources = useSources().data?.sources ?? []
  const source = sources.find(({ key }) => key === state.source)
  const reading = useTableReading(state, source?.unitsAsPrinted)
  const saveSource = useChange('source.save')
  const storing = useTableStore(state, reading, (result) => {
    setStored(result)
    dispatch({ type: 'stored' })
  })
  const { columns, rows, refusals, offered } = reading
  const blank = offered.length === 0 && refusals.length === 0

  const latest = useRef(state)
  latest.current = state
  useEffect(() => {
    const timer = setTimeout(() => keepTable(state), 200)
    return () => clearTimeout(timer)
  }, [state])
  useEffect(() => {
    const keep = () => void keepTable(latest.current)
    addEventListener('pagehide', keep)
    return () => {
      removeEventListener('pagehide', keep)
      keep()
    }
  }, [])
  useEffect(() => {
    if (stored) return
    if (latest.current.rows.length > 0) focusGrid()
    else document.getElementById('table-source')?.focus()
  }, [stored])

  const goTo = (place: Place) => {
    dispatch({ type: 'go', to: place })
    focusGrid()
  }
  const nextRefused = () => {
    const { row, column } = state.at
    const next =
      refusals.find(({ place }) => place.row > row || (place.row === row && place.column > column)) ?? refusals[0]
    if (next) goTo(next.place)
    else say('No place of the table is refused.')
  }
  const takePaste = (text: string) => {
    const table = splitPasted(text)
    if (table.length === 0) {
      say('There is no table in what was copied.')
      return
    }
    dispatch({ type: 'paste', table })
    if (table.length > mostRows) say(`A table takes at most ${mostRows} rows; those beyond were left out.`)
    focusGrid()
  }
  const chooseSource = (key: string) => {
    dispatch({ type: 'origin', change: { source: key } })
    const chosen = sources.find((one) => one.key === key)
    if (blank) dispatch({ type: 'arrange', fields: fieldsOf(chosen) })
  }
  const backToTable = () => {
    storing.close()
    focusGrid()
  }
  const arranged = columns.flatMap(({ field }) => field ?? [])
  const keepColumns = () => {
    if (source === undefined) return
    const { values: _, ...plain } = source
    saveSource.mutate(
      { source: { ...plain, key: source.key, title: source.title, columns: arranged } },
      {
        onSuccess: () => say(`A table under ${source.key} begins with these columns from now on.`),
        onError: (error) => say(failureText(error)),
      },
    )
  }

  useCommands(
    stored
      ? []
      : [
          {
            label: 'Look over the table and store it',
            keys: ['Ctrl+S', 'Ctrl+Enter'],
            run: () => void storing.review(),
          },
          { label: 'Take back the last step in the table', keys: ['Ctrl+Z'], run: () => dispatch({ type: 'undo' }) },
          {
            label: 'Do the last step in the table again',
            keys: ['Ctrl+Shift+Z', 'Ctrl+Y'],
            run: () => dispatch({ type: 'redo' }),
          },
          { label: 'Go to the next refused place of the table', keys: [], run: nextRefused },
          storing.open
            ? { label: 'Back to the table', keys: ['Escape'], run: backToTable }
            : { label: 'Back to the list', keys: ['Escape'], run: () => go('/') },
          { label: 'Add a column to the table', keys: [], run: () => dispatch({ type: 'add-column' }) },
        ],
  )

  if (stored) return <TableStored stored={stored} onAnother={() => setStored(null)} />
  const cells = refusals.filter(({ field }) => field !== null).length
  return (
    <article className="table-page">
      <h1>Enter a table</h1>
      <TableBar state={state} sources={sources} onSource={chooseSource} dispatch={dispatch} goOn={focusGrid} />
      <PasteField take={takePaste} />
      <div className="table-tools">
        <p role="status">
          {blank ? 'Nothing is entered yet' : offered.length === 1 ? '1 caliber' : `${offered.length} calibers`}
          {cells > 0 && `, ${cells === 1 ? '1 cell is' : `${cells} cells are`} refused`}
          {refusals.length > cells &&
            `, ${refusals.length - cells === 1 ? '1 row is' : `${refusals.length - cells} rows are`} refused whole`}
        </p>
        <button
          id="table-look-over"
          type="button"
          className="plain-button chief"
          disabled={blank}
          onClick={() => void storing.review()}
        >
          Look over and store <kbd>Ctrl S</kbd>
        </button>
        <button type="button" className="plain-button" onClick={() => dispatch({ type: 'add-column' })}>
          Add a column
        </button>
        {source && arranged.join() !== (source.columns ?? []).join() && (
          <button type="button" className="plain-button" onClick={keepColumns}>
            Keep these columns for {source.key}
          </button>
        )}
        {!blank && (
          <button type="button" className="plain-button" onClick={() => dispatch({ type: 'start-over' })}>
            Empty the table
          </button>
        )}
      </div>
      {storing.problem && !storing.open && (
        <p className="problem" role="alert">
          {storing.problem}
        </p>
      )}
      <TableGrid
        columns={columns}
        rows={state.rows}
        read={rows}
        at={state.at}
        dispatch={dispatch}
        takePaste={takePaste}
        nextRefused={nextRefused}
        leave={() => document.getElementById('table-look-over')?.focus()}
      />
      <p id="table-hint" className="quiet table-hint">
        Enter goes down, Tab to the right, F2 changes a cell, Delete empties it, Ctrl Backspace takes the row out, F8
        goes to the next refused cell, Escape leaves the table. Nothing is stored until the last step.
      </p>
      {storing.open && (
        <TableReview
          refusals={refusals}
          duplicates={storing.duplicates}
          decisions={storing.decisions}
          decide={storing.decide}
          count={storing.count}
          storing={storing.busy}
          problem={storing.problem}
          goTo={goTo}
          store={() => void storing.store()}
          close={backToTable}
        />
      )}
    </article>
  )
}
