import { useDeferredValue, useEffect, useMemo, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { StockCounts } from '../../../core/api/contract.ts'
import { guessSpringColumns } from '../../../core/exchange/guess-spring-columns.ts'
import { readSpringTable, type SpringTableReading } from '../../../core/exchange/read-spring-table.ts'
import { traysOf } from '../../../core/springs/find-springs.ts'
import { call, useChange, useSprings } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { ListMapping } from './list-mapping.tsx'
import { RefusedRows } from './refused-rows.tsx'
import { splitList, textOfList } from './split-list.ts'
import './import-springs.css'

type Rows = readonly (readonly string[])[]
interface List {
  readonly rows: Rows
  readonly reading: SpringTableReading
}
/** How long changes to the mapping rest before the library is asked what they would do. */
const restMs = 250

/** A list of springs is brought in: what its columns are, what that would do, and then in one step. */
export const ImportSpringsPage = () => {
  const [, go] = useLocation()
  const stored = useSprings()
  const saving = useChange('springs.save-many')
  const [text, setText] = useState('')
  const [list, setList] = useState<List | null>(null)
  const [replace, setReplace] = useState(false)
  const [foreseen, setForeseen] = useState<StockCounts | null>(null)
  const [problem, setProblem] = useState('')
  const settled = useDeferredValue(list)
  const table = useMemo(() => (settled === null ? null : readSpringTable(settled.rows, settled.reading)), [settled])
  const springs = useMemo(() => table?.springs.map(({ spring }) => spring) ?? [], [table])
  const tray = settled?.reading.tray.trim() ?? ''
  const trays = useMemo(() => traysOf(stored.data?.springs ?? []).map((one) => one.tray), [stored.data])

  useEffect(() => {
    setForeseen(null)
    if (springs.length === 0) return
    let current = true
    const timer = setTimeout(() => {
      call('springs.save-many', { tray, springs, replace, dryRun: true }).then(
        (counts) => current && setForeseen(counts),
        (error) => current && setProblem(failureText(error)),
      )
    }, restMs)
    return () => {
      current = false
      clearTimeout(timer)
    }
  }, [springs, tray, replace])
  useCommands([{ label: 'Back to the springs', keys: ['Escape'], run: () => go('/springs') }])

  const take = (typed: string, name: string) => {
    const rows = splitList(typed)
    setProblem('')
    if (rows.length < 1 || rows.every((row) => row.length < 2)) {
      setList(null)
      setProblem('No columns were found in this; give a table with its cells set apart by tabs, semicolons or commas.')
      return
    }
    setList({
      rows,
      reading: { ...guessSpringColumns(rows), order: 'height-thickness-length-barrel', tray: name },
    })
  }
  const bringIn = () =>
    saving.mutate(
      { tray, springs, replace },
      {
        onSuccess: ({ added, updated, removed }) => {
          say(`Brought in: ${added} added, ${updated} changed, ${removed} removed. Ctrl Z takes it back.`)
          go('/springs')
        },
        onError: (error) => setProblem(failureText(error)),
      },
    )
  const changes = foreseen === null ? 0 : foreseen.added + foreseen.updated + foreseen.removed
  return (
    <article className="import-springs">
      <p>
        <Link href="/springs">Springs</Link>
      </p>
      <h1>Bring in a list of springs</h1>
      <div className="list-source">
        <label>
          A table from a spreadsheet (.csv, .txt)
          <input
            type="file"
            accept=".csv,.txt,.tsv,text/csv,text/plain"
            onChange={async ({ target }) => {
              const file = target.files?.[0]
              if (file) take(textOfList(await file.arrayBuffer()), file.name.replace(/\.\w+$/, '').slice(0, 200))
            }}
          />
        </label>
        <label>
          Or paste it here
          <textarea rows={2} spellCheck={false} value={text} onChange={({ target }) => setText(target.value)} />
        </label>
        {text.trim() !== '' && (
          <button type="button" className="plain-button" onClick={() => take(text, '')}>
            Read what is pasted
          </button>
        )}
      </div>
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      {list && (
        <ListMapping
          rows={list.rows}
          reading={list.reading}
          set={(reading) => setList({ ...list, reading })}
          replace={replace}
          setReplace={setReplace}
          trays={trays}
        />
      )}
      {table && (
        <section className="list-foreseen" aria-label="What would be done" aria-live="polite">
          <h2>What would be done</h2>
          {springs.length === 0 ? (
            <p>No row can be brought in yet: say which columns hold number, height and thickness.</p>
          ) : foreseen === null ? (
            <p>Looking…</p>
          ) : (
            <p className="list-counts">
              <span>{foreseen.added} added</span>
              <span>{foreseen.updated} changed</span>
              <span>{foreseen.unchanged} unchanged</span>
              <span>{foreseen.removed} removed</span>
              <span>{table.refused.length} refused</span>
            </p>
          )}
          {saving.isPending && <progress aria-label="Bringing in the list" />}
          <p className="actions">
            <button
              type="button"
              className="plain-button chief"
              disabled={changes === 0 || saving.isPending || settled !== list}
              onClick={bringIn}
            >
              {saving.isPending ? 'Bringing in…' : 'Bring in'}
            </button>
          </p>
          <p className="quiet">Nothing is stored until you press Bring in, and one step takes all of it back.</p>
        </section>
      )}
      {table && table.refused.length > 0 && <RefusedRows refused={table.refused} />}
    </article>
  )
}
