import { useMemo, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { guessSpringColumns } from '../../../core/exchange/guess-spring-columns.ts'
import type { SpringTableReading } from '../../../core/exchange/read-spring-table.ts'
import { useChange } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { ForeseenChanges } from './foreseen-changes.tsx'
import { ListMapping } from './list-mapping.tsx'
import { ListSource } from './list-source.tsx'
import { RefusedRows } from './refused-rows.tsx'
import { splitList } from './split-list.ts'
import { springsPlace } from './springs-place.ts'
import { useForeseen } from './use-foreseen.ts'
import { type OpenedList, useListTable } from './use-list-table.ts'
import { WordMeaningsTable } from './word-meanings.tsx'
import './import-springs.css'

/** A list of springs is brought in: what its columns are, what that would do, and then in one step. */
export const ImportSpringsPage = () => {
  const [, go] = useLocation()
  const saving = useChange('springs.save-many')
  const [list, setList] = useState<OpenedList | null>(null)
  const [name, setName] = useState('')
  const [replace, setReplace] = useState(false)
  const [problem, setProblem] = useState('')
  const { table, rowsRead, whole } = useListTable(list)
  const springs = useMemo(() => table?.springs.map(({ spring }) => spring) ?? [], [table])
  const tray = name.trim()
  const foreseen = useForeseen(springs, tray, replace)
  useTitle('Bring in a list of springs')

  const take = (text: string, called: string) => {
    const rows = splitList(text)
    setProblem('')
    if (rows.length < 1 || rows.every((row) => row.length < 2)) {
      setList(null)
      setProblem('No columns were found in this; give a table with its cells set apart by tabs, semicolons or commas.')
      return
    }
    setName(called)
    setList({ rows, reading: { ...guessSpringColumns(rows), order: 'height-thickness-length-barrel', words: {} } })
  }
  const bringIn = () =>
    saving.mutate(
      { tray, springs: [...springs], replace },
      {
        onSuccess: ({ added, updated, removed }) => {
          say(`Brought in: ${added} added, ${updated} changed, ${removed} removed. Ctrl Z takes it back.`)
          springsPlace.tray = tray
          go('/springs')
        },
        onError: (error) => setProblem(failureText(error)),
      },
    )
  const { counts } = foreseen
  const ready = whole && !saving.isPending && counts !== null && counts.added + counts.updated + counts.removed > 0
  useCommands([
    { label: 'Back to the springs', keys: ['Escape'], run: () => go('/springs') },
    { label: 'Bring in this list', keys: ['Ctrl+Enter'], run: () => ready && bringIn() },
  ])
  const fault = problem || foreseen.problem
  return (
    <article className="import-springs">
      <header className="page-head">
        <h1>Bring in a list of springs</h1>
        <p className="head-actions">
          <Link href="/springs" className="plain-button">
            Back to the springs <kbd>Esc</kbd>
          </Link>
        </p>
      </header>
      <ListSource take={take} />
      {fault && (
        <p className="problem" role="alert">
          {fault}
        </p>
      )}
      {list && (
        <ListMapping
          rows={list.rows}
          reading={list.reading}
          set={(reading: SpringTableReading) => setList({ ...list, reading })}
          name={name}
          setName={setName}
          replace={replace}
          setReplace={setReplace}
          trays={foreseen.trays}
        />
      )}
      {list && table && table.words.length > 0 && (
        <WordMeaningsTable
          words={table.words}
          meanings={list.reading.words}
          set={(words) => setList({ ...list, reading: { ...list.reading, words } })}
        />
      )}
      {list && (
        <ForeseenChanges
          counts={whole ? counts : null}
          refused={table?.refused.length ?? 0}
          read={{ done: whole ? list.rows.length : rowsRead, of: list.rows.length }}
          asked={{ done: foreseen.asked, of: springs.length }}
          bringingIn={saving.isPending}
          bringIn={bringIn}
        />
      )}
      {list && table && table.refused.length > 0 && <RefusedRows refused={table.refused} />}
    </article>
  )
}
