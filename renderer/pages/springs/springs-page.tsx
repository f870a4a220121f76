import { useEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { figure } from '../../../core/wording/figure.ts'
import { useSprings } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { usePrinting } from '../../components/use-printing.ts'
import { useTitle } from '../../components/use-title.ts'
import { EmptyTray } from './empty-tray.tsx'
import { FindBar } from './find-bar.tsx'
import { PrintedSprings } from './printed-springs.tsx'
import { saveSprings } from './save-springs.ts'
import type { StoredSpring } from './spring-columns.ts'
import { SpringList } from './spring-list.tsx'
import { type OpenPane, SpringPane } from './spring-pane.tsx'
import { SpringsHead } from './springs-head.tsx'
import { useFoundSprings } from './use-found-springs.ts'
import { useTrayChanges } from './use-tray-changes.ts'
import './springs.css'

const none: readonly StoredSpring[] = []
const countOf = (count: number): string => `${figure(count)} ${count === 1 ? 'spring' : 'springs'}`
const countText = (found: number, all: number): string =>
  found === all ? countOf(all) : `${figure(found)} of ${countOf(all)} found`

/** The tray and the suppliers' lists: every spring, found, entered, changed, booked out. */
export const SpringsPage = () => {
  const [, go] = useLocation()
  const answer = useSprings()
  const springs = answer.data?.springs ?? none
  const { text, setText, sought, tray, setTray, trays, order, sort, found } = useFoundSprings(springs)
  const input = useRef<HTMLInputElement>(null)
  const [at, setAt] = useState<number | null>(null)
  const [pane, setPane] = useState<OpenPane | null>(null)
  const [focusAsked, setFocusAsked] = useState(0)

  const inPane = pane !== null && pane.what !== 'new' ? springs.find(({ id }) => id === pane.id) : undefined
  const inHand = inPane ?? springs.find(({ id }) => id === at)

  useTitle('Springs')
  const toList = () => setFocusAsked((asked) => asked + 1)
  const ready = springs.length > 0
  useEffect(() => {
    if (ready) setFocusAsked((asked) => asked + 1)
  }, [ready])

  const leave = () => {
    setPane(null)
    toList()
  }
  const { save, bookOut, remove } = useTrayChanges((id) => {
    setAt(id)
    leave()
  })
  const takeOut = (spring: StoredSpring) => {
    const place = found.findIndex(({ id }) => id === spring.id)
    remove(spring, (found[place + 1] ?? found[place - 1])?.id ?? null)
  }
  const withSpring = (run: (spring: StoredSpring) => void) => () => {
    if (inHand) run(inHand)
    else say('Go to a spring first.')
  }
  const enter = () => setPane({ what: 'new' })
  useCommands([
    {
      label: 'Find a spring',
      keys: ['/'],
      run: () => {
        input.current?.focus()
        input.current?.select()
      },
    },
    { label: 'Enter a spring', keys: ['A'], run: enter },
    { label: 'Edit this spring', keys: ['E'], run: withSpring(({ id }) => setPane({ what: 'change', id })) },
    { label: 'Book out this spring', keys: ['B'], run: withSpring(({ id }) => setPane({ what: 'book-out', id })) },
    { label: 'Remove this spring', keys: ['Delete'], run: withSpring(takeOut) },
    { label: pane ? 'Close this spring' : 'Back to calibers', keys: ['Escape'], run: () => (pane ? leave() : go('/')) },
  ])

  const printing = usePrinting()
  const opened = pane !== null && (pane.what === 'new' || inPane !== undefined) ? pane : null
  return (
    <article className="springs" data-open={opened !== null || undefined}>
      <SpringsHead
        count={answer.data === undefined ? '' : countText(found.length, springs.length)}
        enter={enter}
        save={found.length > 0 ? () => saveSprings(found) : undefined}
      />
      {answer.error && (
        <p className="notice" role="alert">
          {failureText(answer.error)}
        </p>
      )}
      {answer.data !== undefined && springs.length === 0 && pane === null && <EmptyTray enter={enter} />}
      {springs.length > 0 && (
        <FindBar
          input={input}
          text={text}
          setText={setText}
          toFirst={() => {
            setAt(found[0]?.id ?? null)
            toList()
          }}
          tray={tray}
          setTray={setTray}
          trays={trays}
        />
      )}
      <div className="springs-body">
        {opened && (
          <aside className="spring-pane">
            <SpringPane
              what={opened.what}
              spring={inPane}
              tray={tray ?? ''}
              trays={trays.map((one) => one.tray)}
              save={save}
              bookOut={bookOut}
              remove={takeOut}
              open={setPane}
              leave={leave}
            />
          </aside>
        )}
        {printing && <PrintedSprings springs={found} />}
        {found.length > 0 && !printing && (
          <SpringList
            springs={found}
            {...order}
            sort={sort}
            at={at}
            take={setAt}
            open={(id) => {
              setAt(id)
              setPane({ what: 'details', id })
            }}
            focusAsked={focusAsked}
          />
        )}
        {springs.length > 0 && found.length === 0 && (
          <div className="notice">
            <p>
              None of the {countOf(springs.length)} answers to “{sought}”. Sizes are found near those typed: height to
              0.1 mm, thickness to 0.01 mm, length to a tenth of it, barrel to 0.5 mm.
            </p>
            <button
              type="button"
              className="plain-button"
              onClick={() => {
                setText('')
                setTray(null)
              }}
            >
              Show all springs
            </button>
          </div>
        )}
      </div>
    </article>
  )
}
