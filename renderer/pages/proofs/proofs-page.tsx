import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { changesMade, useStatus } from '../../api/hooks.ts'
import { saveAs } from '../../api/save-as.ts'
import { useCommands } from '../../components/commands.ts'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { listPlace } from '../calibers/list-place.ts'
import { sheetCsv } from './sheet-csv.ts'
import { SheetList } from './sheet-list.tsx'
import { sheetPlace, usualFilter } from './sheet-place.ts'
import { filterLines, type Grouping, groupLines, type SheetFilter } from './sheet-rows.ts'
import { startSheet, stopSheet, useSheetRun } from './sheet-run.ts'
import { SheetSummary } from './sheet-summary.tsx'
import { SheetTools } from './sheet-tools.tsx'
import './proofs-page.css'

/** A library of so many calibers is proved again by itself once it has changed; a larger one when it is asked for. */
const smallLibrary = 2000

const today = () => new Date().toLocaleDateString(undefined, { day: 'numeric', month: 'long', year: 'numeric' })

/** The sheet of proofs: the whole library proved at once. */
export const ProofsPage = () => {
  const [, go] = useLocation()
  const run = useSheetRun()
  const status = useStatus()
  const input = useRef<HTMLInputElement>(null)
  const page = useRef<HTMLElement>(null)
  const [by, setGrouping] = useState(sheetPlace.by)
  const [filter, setShown] = useState(sheetPlace.filter)
  const running = run.state === 'running'
  const wantsUnchecked = filter.standings.includes('cannot-check')
  const changed = run.state !== 'not-begun' && !running && run.changes !== changesMade()

  const prove = () => void startSheet({ unchecked: wantsUnchecked })
  // biome-ignore lint/correctness/useExhaustiveDependencies: begun by itself when there is nothing yet, or no longer what it was
  useEffect(() => {
    if (run.state === 'not-begun' || (changed && run.total <= smallLibrary)) prove()
    else if (wantsUnchecked && !run.unchecked) prove()
  }, [status.dataUpdatedAt, changed, wantsUnchecked])
  useTitle('Proofs')
  useEffect(() => {
    listPlace.back = '/proofs'
  }, [])

  const setBy = (next: Grouping) => {
    sheetPlace.by = next
    setGrouping(next)
  }
  const setFilter = (next: SheetFilter) => {
    sheetPlace.filter = next
    setShown(next)
  }
  const lines = useDeferredValue(run.lines)
  const wanted = useDeferredValue(filter)
  const shown = useMemo(() => filterLines(lines, wanted), [lines, wanted])
  const groups = useMemo(() => groupLines(shown, by), [shown, by])
  const makers = useMemo(() => [...new Set(lines.map(({ maker }) => maker))].sort(), [lines])

  const saveCsv = () => {
    saveAs('lignebook proofs.csv', 'text/csv;charset=utf-8', sheetCsv(shown))
    say(`Saved ${shown.length} findings as lignebook proofs.csv.`)
  }
  useCommands([
    { label: 'Prove the whole library', keys: ['V'], run: prove },
    ...(running ? [{ label: 'Stop proving', keys: [], run: stopSheet }] : []),
    {
      label: 'Find in the sheet',
      keys: ['/'],
      run: () => {
        input.current?.focus()
        input.current?.select()
      },
    },
    { label: 'Save the sheet as CSV', keys: [], run: saveCsv },
    { label: 'Print the sheet', keys: ['Ctrl+P'], run: () => print() },
    { label: 'Back to the list', keys: ['Escape'], run: () => go('/') },
  ])

  const empty = run.state === 'done' && run.total === 0
  const clean = run.state === 'done' && lines.length === 0 && !empty
  return (
    <article ref={page} className="sheet-page">
      <header className="page-head">
        <h1>Proofs</h1>
        <p className="sheet-on-paper">{today()}</p>
        <p className="head-actions">
          {running ? (
            <button type="button" className="plain-button" onClick={stopSheet}>
              Stop
            </button>
          ) : (
            <button type="button" className="plain-button" onClick={prove}>
              Prove again <kbd>V</kbd>
            </button>
          )}
          <button type="button" className="plain-button" onClick={saveCsv} disabled={shown.length === 0}>
            Save as CSV
          </button>
          <button type="button" className="plain-button" onClick={() => print()} disabled={shown.length === 0}>
            Print
          </button>
        </p>
      </header>
      <SheetSummary run={run} />
      {changed && run.total > smallLibrary && (
        <p className="sheet-changed">
          The library has changed since.{' '}
          <button type="button" className="plain-button" onClick={prove}>
            Prove it again
          </button>
        </p>
      )}
      <SheetTools
        input={input}
        by={by}
        setBy={setBy}
        filter={filter}
        setFilter={setFilter}
        makers={makers}
        counts={run.counts}
        goDown={() => page.current?.querySelector<HTMLElement>('.sheet-line')?.focus()}
      />
      {empty && (
        <p className="notice">
          There is no caliber in the library yet. <Link href="/new">Enter the first caliber</Link>
        </p>
      )}
      {clean && <p className="notice">Nothing is wrong, and nothing is doubtful.</p>}
      {lines.length > 0 && shown.length === 0 && (
        <div className="notice">
          <p>None of the {lines.length} findings answers to what is asked for.</p>
          <button type="button" className="plain-button" onClick={() => setFilter(usualFilter)}>
            Show all that is wrong or doubtful
          </button>
        </div>
      )}
      <SheetList groups={groups} by={by} counts={run.counts} />
    </article>
  )
}
