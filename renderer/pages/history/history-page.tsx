import { type KeyboardEvent, useEffect, useRef } from 'react'
import { Link, useLocation } from 'wouter'
import type { CallOutput } from '../../../core/api/contract.ts'
import { useChange, useHistory } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { walkLines } from '../../components/walk-lines.ts'
import { RevisionChanges } from './revision-changes.tsx'
import './history-page.css'

type Revision = CallOutput<'history.list'>['revisions'][number]

const day = (iso: string): string =>
  new Date(iso).toLocaleDateString(undefined, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' })
const time = (iso: string): string =>
  new Date(iso).toLocaleTimeString(undefined, { hour: '2-digit', minute: '2-digit' })

/** A phrase as the beginning of a line. */
const atHead = (phrase: string): string => phrase.charAt(0).toUpperCase() + phrase.slice(1)

const byDay = (revisions: readonly Revision[]): (readonly [string, readonly Revision[]])[] => {
  const days = new Map<string, Revision[]>()
  for (const revision of revisions) {
    const on = day(revision.at)
    days.set(on, [...(days.get(on) ?? []), revision])
  }
  return [...days]
}

/** Every change of the library, latest first: to look at, to compare and to take back. */
export const HistoryPage = ({ open }: { open: number | undefined }) => {
  const [, go] = useLocation()
  const history = useHistory()
  const takingBack = useChange('history.take-back')
  const list = useRef<HTMLDivElement>(null)
  const revisions = history.data?.pages.flatMap((page) => page.revisions) ?? []

  const lines = () => [...(list.current?.querySelectorAll<HTMLElement>('.revision-line') ?? [])]
  const arrived = useRef<number | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus goes to the change that is open, once it is on the page
  useEffect(() => {
    if (arrived.current === (open ?? 0)) return
    const line = open === undefined ? lines()[0] : document.getElementById(`revision-${open}`)
    if (!line) return
    // Closing a change leaves the focus on its line.
    if (open !== undefined || arrived.current === null) line.focus()
    arrived.current = open ?? 0
  }, [open, revisions.length])
  useTitle('History')

  const takeBack = (id: number) =>
    takingBack.mutate(
      { id },
      {
        onSuccess: ({ done }) => say(`${atHead(done)}: done. Ctrl Z undoes it.`),
        onError: (error) => say(failureText(error)),
      },
    )
  useCommands([
    {
      label: open === undefined ? 'Back to the list' : 'Close the change',
      keys: ['Escape'],
      run: () => go(open === undefined ? '/' : '/history'),
    },
  ])
  const walk = (event: KeyboardEvent) => walkLines(event, lines())

  return (
    <article className="history">
      <header className="page-head">
        <h1>History</h1>
        <p className="quiet">Every change, latest first. Open one to see what it changed.</p>
      </header>
      {history.error && (
        <p className="notice" role="alert">
          {failureText(history.error)}
        </p>
      )}
      {history.isSuccess && revisions.length === 0 && (
        <p className="notice">
          Nothing has been changed yet. <Link href="/">Go to calibers</Link>
        </p>
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the arrow keys go along the lines, which are buttons */}
      <div ref={list} onKeyDown={walk}>
        {byDay(revisions).map(([on, ofDay]) => (
          <section key={on}>
            <h2>{on}</h2>
            <ol>
              {ofDay.map((revision) => (
                <li key={revision.id} className="revision" data-taken-back={revision.takenBack}>
                  <button
                    type="button"
                    id={`revision-${revision.id}`}
                    className="revision-line"
                    aria-expanded={open === revision.id}
                    onClick={() => go(open === revision.id ? '/history' : `/history/${revision.id}`)}
                  >
                    <time dateTime={revision.at}>{time(revision.at)}</time>
                    <span className="revision-action">{atHead(revision.action)}</span>
                    {revision.takenBack && <span className="quiet">taken back</span>}
                  </button>
                  {open === revision.id && (
                    <RevisionChanges id={revision.id} takeBack={takeBack} busy={takingBack.isPending} />
                  )}
                </li>
              ))}
            </ol>
          </section>
        ))}
      </div>
      {history.hasNextPage && (
        <p className="actions">
          <button type="button" className="plain-button" onClick={() => void history.fetchNextPage()}>
            Show older changes
          </button>
        </p>
      )}
      {open !== undefined && history.isSuccess && !revisions.some(({ id }) => id === open) && (
        <section aria-label={`Change ${open}`}>
          <RevisionChanges id={open} takeBack={takeBack} busy={takingBack.isPending} />
        </section>
      )}
    </article>
  )
}
