import { useEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { CallOutput } from '../../../core/api/contract.ts'
import type { GaugeTable } from '../../../core/springs/gauge-table.ts'
import { useChange, useGauges, useSources } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { walkLines } from '../../components/walk-lines.ts'
import { GaugeForm } from './gauge-form.tsx'
import { GaugeSheet } from './gauge-sheet.tsx'
import './gauges.css'

type Stored = CallOutput<'gauges.list'>['gauges'][number]
const none: readonly Stored[] = []

/** The tables of old gauges that their owner entered: nothing is converted by any other. */
export const GaugesPage = () => {
  const [, go] = useLocation()
  const gauges = useGauges()
  const sources = useSources().data?.sources ?? []
  const saving = useChange('gauge.save')
  const removing = useChange('gauge.remove')
  const list = useRef<HTMLUListElement>(null)
  const [open, setOpen] = useState<number | 'new' | null>(null)
  const focusNext = useRef<number | null>(null)
  const tables = gauges.data?.gauges ?? none

  useTitle('Gauge tables')
  const titles = () => [...(list.current?.querySelectorAll<HTMLElement>('.gauge-title') ?? [])]
  const arrived = useRef(false)
  // biome-ignore lint/correctness/useExhaustiveDependencies: once the list shows what was asked for, the focus goes there
  useEffect(() => {
    if (open !== null || gauges.data === undefined) return
    const wanted = focusNext.current
    if (arrived.current && wanted === null) return
    const title =
      titles().find((each) => each.dataset.id === String(wanted)) ?? (arrived.current ? undefined : titles()[0])
    if (title === undefined && wanted !== null) return
    arrived.current = true
    focusNext.current = null
    if (title) title.focus()
    else document.getElementById('main')?.focus({ preventScroll: true })
  }, [gauges.data, open])

  const leave = () => {
    focusNext.current = typeof open === 'number' ? open : (tables[0]?.id ?? null)
    setOpen(null)
  }
  const save = (id: number | null) => async (table: GaugeTable) => {
    try {
      const saved = await saving.mutateAsync({ id, table })
      focusNext.current = saved.id
      say(`${id === null ? 'Entered' : 'Saved'} ${table.name}. Ctrl Z takes it back.`)
      setOpen(null)
      return null
    } catch (error) {
      return failureText(error)
    }
  }
  const remove = ({ id, name }: Stored) => {
    const at = tables.findIndex((table) => table.id === id)
    removing.mutate(
      { id },
      {
        onSuccess: () => {
          focusNext.current = (tables[at + 1] ?? tables[at - 1])?.id ?? null
          say(`Removed ${name}. Ctrl Z brings it back.`)
        },
        onError: (error) => say(failureText(error)),
      },
    )
  }
  const enter = () => setOpen('new')
  useCommands([
    { label: 'Enter a gauge table', keys: ['A'], run: enter },
    {
      label: 'Remove this gauge table',
      keys: ['Delete'],
      run: () => {
        const id = document.activeElement?.closest<HTMLElement>('.gauge')?.dataset.id
        const table = tables.find((each) => String(each.id) === id)
        if (table) remove(table)
        else say('Go to a gauge table first.')
      },
    },
    { label: 'Print the gauge tables', keys: ['Ctrl+P'], run: () => print() },
    { label: 'Back to the springs', keys: ['Escape'], run: () => go('/springs') },
  ])
  return (
    <article className="gauges">
      <header className="page-head">
        <h1>Gauge tables</h1>
        <p className="head-actions">
          <button type="button" className="plain-button" onClick={enter}>
            Enter a gauge table <kbd>A</kbd>
          </button>
          <button type="button" className="plain-button" disabled={tables.length === 0} onClick={() => print()}>
            Print <kbd>Ctrl P</kbd>
          </button>
        </p>
      </header>
      <p className="quiet gauges-caution">
        Every maker numbered his gauge as he liked, so one number is another size on another gauge. Lignebook never
        guesses: a printed number is looked up only in a table entered here, only where it names that gauge and leaves
        no doubt, and it is shown beside the number, never in its place.
      </p>
      {gauges.error && (
        <p className="notice" role="alert">
          {failureText(gauges.error)}
        </p>
      )}
      {open === 'new' && <GaugeForm table={null} id={null} sources={sources} save={save(null)} leave={leave} />}
      {gauges.isSuccess && tables.length === 0 && open === null && (
        <div className="notice">
          <p>
            No gauge table is in the library, and none comes with it. If you own one on paper, type it or paste it,
            number beside size; gauge numbers of calibers that name it are then read by it.
          </p>
          <p className="actions">
            <button type="button" className="plain-button chief" onClick={enter}>
              Enter a gauge table
            </button>
          </p>
        </div>
      )}
      {tables.length > 0 && (
        <ul ref={list} aria-label="Gauge tables" onKeyDown={(event) => walkLines(event, titles())}>
          {tables.map(({ id, ...table }) =>
            open === id ? (
              <li key={id} className="gauge">
                <GaugeForm table={table as GaugeTable} id={id} sources={sources} save={save(id)} leave={leave} />
              </li>
            ) : (
              <GaugeSheet
                key={id}
                id={id}
                table={table as GaugeTable}
                sources={sources}
                edit={() => setOpen(id)}
                remove={() => remove({ id, ...table } as Stored)}
              />
            ),
          )}
        </ul>
      )}
    </article>
  )
}
