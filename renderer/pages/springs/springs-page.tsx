import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { findSprings, type SpringSorting, shelveSprings, traysOf } from '../../../core/springs/find-springs.ts'
import type { StockSpring } from '../../../core/springs/stock-spring.ts'
import { useChange, useSprings } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { BookOutForm } from './book-out-form.tsx'
import type { StoredSpring } from './spring-columns.ts'
import { SpringDetails } from './spring-details.tsx'
import { SpringForm } from './spring-form.tsx'
import { SpringList } from './spring-list.tsx'
import './springs.css'

type Pane = { readonly what: 'details' | 'change' | 'book-out'; readonly id: number } | { readonly what: 'new' } | null
const none: readonly StoredSpring[] = []
const countOf = (count: number): string => `${count} ${count === 1 ? 'spring' : 'springs'}`

/** The tray and the suppliers' lists: every spring, found, entered, changed, booked out. */
export const SpringsPage = () => {
  const [, go] = useLocation()
  const answer = useSprings()
  const saving = useChange('spring.save')
  const removing = useChange('spring.remove')
  const booking = useChange('spring.book-out')
  const input = useRef<HTMLInputElement>(null)
  const [text, setText] = useState('')
  const [tray, setTray] = useState<string | null>(null)
  const [order, setOrder] = useState<{ readonly by: SpringSorting | null; readonly down: boolean }>({
    by: null,
    down: false,
  })
  const [at, setAt] = useState<number | null>(null)
  const [pane, setPane] = useState<Pane>(null)
  const [focusAsked, setFocusAsked] = useState(0)

  const springs = answer.data?.springs ?? none
  const shelf = useMemo(() => shelveSprings(springs), [springs])
  const trays = useMemo(() => traysOf(springs), [springs])
  const sought = useDeferredValue(text)
  const onTray = trays.some((one) => one.tray === tray) ? tray : null
  const found = useMemo(
    () => findSprings(shelf, { text: sought, tray: onTray, ...order }),
    [shelf, sought, onTray, order],
  )
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
  const sort = (by: SpringSorting) =>
    setOrder((now) => (now.by !== by ? { by, down: false } : now.down ? { by: null, down: false } : { by, down: true }))
  const save = async (spring: StockSpring): Promise<string | null> => {
    const id = pane?.what === 'change' ? pane.id : null
    try {
      const saved = await saving.mutateAsync({ id, spring })
      say(`${id === null ? 'Entered' : 'Saved'} ${spring.supplierRef}. Ctrl Z takes it back.`)
      setAt(saved.id)
      leave()
      return null
    } catch (error) {
      return failureText(error)
    }
  }
  const bookOut = (spring: StoredSpring) => async (count: number, reason: string) => {
    try {
      const { left } = await booking.mutateAsync({ id: spring.id, count, reason })
      say(`Booked out ${count} × ${spring.supplierRef}; ${left} left. Ctrl Z takes it back.`)
      leave()
      return null
    } catch (error) {
      return failureText(error)
    }
  }
  const remove = ({ id, supplierRef }: StoredSpring) => {
    const place = found.findIndex((spring) => spring.id === id)
    removing.mutate(
      { id },
      {
        onSuccess: () => {
          setAt((found[place + 1] ?? found[place - 1])?.id ?? null)
          say(`Removed ${supplierRef}. Ctrl Z brings it back.`)
          leave()
        },
        onError: (error) => say(failureText(error)),
      },
    )
  }
  const withSpring = (run: (spring: StoredSpring) => void) => () => {
    if (inHand) run(inHand)
    else say('Go to a spring first.')
  }
  const change = ({ id }: StoredSpring) => setPane({ what: 'change', id })
  const askBookOut = ({ id }: StoredSpring) => setPane({ what: 'book-out', id })
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
    { label: 'Edit this spring', keys: ['E'], run: withSpring(change) },
    { label: 'Book out this spring', keys: ['B'], run: withSpring(askBookOut) },
    { label: 'Remove this spring', keys: ['Delete'], run: withSpring(remove) },
    { label: pane ? 'Close this spring' : 'Back to calibers', keys: ['Escape'], run: () => (pane ? leave() : go('/')) },
  ])

  const paneBody =
    pane?.what === 'new' ? (
      <SpringForm spring={null} tray={onTray ?? ''} trays={trays.map((one) => one.tray)} save={save} leave={leave} />
    ) : inPane === undefined ? null : pane?.what === 'change' ? (
      <SpringForm
        key={inPane.id}
        spring={withoutId(inPane)}
        tray=""
        trays={trays.map((one) => one.tray)}
        save={save}
        leave={leave}
      />
    ) : pane?.what === 'book-out' ? (
      <BookOutForm key={inPane.id} spring={inPane} bookOut={bookOut(inPane)} leave={leave} />
    ) : (
      <SpringDetails
        spring={inPane}
        edit={() => change(inPane)}
        bookOut={() => askBookOut(inPane)}
        remove={() => remove(inPane)}
        close={leave}
      />
    )
  const empty = answer.data !== undefined && springs.length === 0
  return (
    <article className="springs" data-open={paneBody !== null || undefined}>
      <header className="springs-head">
        <h1>Springs</h1>
        <p className="quiet" role="status">
          {answer.data === undefined
            ? ''
            : found.length === springs.length
              ? countOf(found.length)
              : `${found.length} of ${countOf(springs.length)} found`}
        </p>
        <p className="actions">
          <button type="button" className="plain-button" onClick={enter}>
            Enter a spring <kbd>A</kbd>
          </button>
          <Link href="/springs/import" className="plain-button">
            Bring in a list
          </Link>
          <Link href="/orders" className="plain-button">
            Order list <kbd>L</kbd>
          </Link>
        </p>
      </header>
      {answer.error && (
        <p className="notice" role="alert">
          {failureText(answer.error)}
        </p>
      )}
      {empty && pane === null && (
        <div className="notice">
          <p>
            No spring is in the library yet. A tray is what lies in your drawer, each spring with its number, its sizes
            and how many there are; a supplier’s list stands beside it as a tray of its own. Once they are here,
            Lignebook can say which of them fit a caliber.
          </p>
          <p className="actions">
            <button type="button" className="plain-button chief" onClick={enter}>
              Enter a spring
            </button>
            <Link href="/springs/import" className="plain-button">
              Bring in a list
            </Link>
          </p>
        </div>
      )}
      {springs.length > 0 && (
        <div className="springs-tools">
          <div className="search">
            <input
              ref={input}
              type="text"
              aria-label="Find a spring by number, tray, note, price or sizes"
              placeholder="Number, note, or sizes: 1.50 × 0.105 × 360"
              autoComplete="off"
              spellCheck={false}
              value={text}
              onChange={({ target }) => setText(target.value)}
              onKeyDown={(event) => {
                if (event.key === 'ArrowDown') {
                  setAt(found[0]?.id ?? null)
                  toList()
                } else if (event.key === 'Escape' && text !== '') setText('')
                else return
                event.preventDefault()
              }}
            />
            <kbd>/</kbd>
          </div>
          <label>
            Tray or list
            <select
              value={onTray === null ? 'all' : `on ${onTray}`}
              onChange={({ target }) => setTray(target.value === 'all' ? null : target.value.slice(3))}
            >
              <option value="all">all</option>
              {trays.map((one) => (
                <option key={one.tray} value={`on ${one.tray}`}>
                  {one.tray || 'on none'} ({one.springs})
                </option>
              ))}
            </select>
          </label>
        </div>
      )}
      <div className="springs-body">
        {paneBody && <aside className="spring-pane">{paneBody}</aside>}
        {found.length > 0 && (
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

const withoutId = ({ id: _, ...spring }: StoredSpring): StockSpring => spring as StockSpring
