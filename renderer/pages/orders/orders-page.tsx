import Papa from 'papaparse'
import { type KeyboardEvent, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { type NewOrderLine, type OrderState, orderStates } from '../../../core/orders/order-line.ts'
import { groupOrders, orderText, rowsFromOrders } from '../../../core/orders/order-table.ts'
import { receivedSpring } from '../../../core/orders/received-spring.ts'
import { springCautions } from '../../../core/wording/spring-cautions.ts'
import { useChange, useOrders } from '../../api/hooks.ts'
import { saveAs } from '../../api/save-as.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { walkLines } from '../../components/walk-lines.ts'
import { AddOrder } from './add-order.tsx'
import { type Ordered, OrderRow } from './order-row.tsx'
import './orders.css'

const headings: Readonly<Record<OrderState, string>> = { open: 'To order', ordered: 'Ordered', received: 'Received' }
const today = (): string => new Date().toLocaleDateString(undefined, { dateStyle: 'long' })

/** What is to be ordered, by supplier: springs and parts from calibers, each with where its specification stands. */
export const OrdersPage = () => {
  const [, go] = useLocation()
  const orders = useOrders()
  const saving = useChange('order.save')
  const removing = useChange('order.remove')
  const marking = useChange('orders.mark')
  const booking = useChange('order.book-in')
  const [chosen, setChosen] = useState<ReadonlySet<number>>(new Set())
  const [adding, setAdding] = useState(false)
  const list = useRef<HTMLDivElement>(null)
  const lines = orders.data?.orders ?? []
  const failed = (error: unknown) => say(failureText(error))

  useTitle('Order list')

  const change = ({ id, ...line }: Ordered, more: Partial<Ordered>) =>
    saving.mutate({ id, line: { ...line, ...more } }, { onError: failed })
  const remove = ({ id, what }: Ordered) =>
    removing.mutate(
      { id },
      { onSuccess: () => say(`Taken off the list: ${what}. Ctrl Z brings it back.`), onError: failed },
    )
  const add = (line: NewOrderLine) =>
    saving.mutate(
      { id: null, line: { ...line, quantity: 1, state: 'open' } },
      {
        onSuccess: () => {
          setAdding(false)
          say(`Put on the order list: ${line.what}.`)
        },
        onError: failed,
      },
    )
  const mark = (state: OrderState) => {
    const ids = lines.filter(({ id }) => chosen.has(id)).map(({ id }) => id)
    if (ids.length === 0) {
      say('Choose lines first, with the space bar.')
      return
    }
    marking.mutate(
      { ids, state },
      {
        onSuccess: () => {
          setChosen(new Set())
          say(`${ids.length === 1 ? 'One line' : `${ids.length} lines`} marked as ${state}. Ctrl Z takes it back.`)
        },
        onError: failed,
      },
    )
  }
  const bookIn = ({ id, quantity }: Ordered) =>
    booking.mutate(
      { id },
      {
        onSuccess: ({ ref, inStock }) =>
          say(`Booked into your tray: ${quantity} × ${ref}, now ${inStock}. ${springCautions.ring}`),
        onError: failed,
      },
    )
  const choose = (id: number) =>
    setChosen((before) => {
      const next = new Set(before)
      if (!next.delete(id)) next.add(id)
      return next
    })
  const saveCsv = () => {
    const text = Papa.unparse(rowsFromOrders(lines), { escapeFormulae: true })
    saveAs('order list.csv', 'text/csv', `\ufeff${text}\r\n`)
  }
  const copy = () =>
    navigator.clipboard.writeText(orderText(lines)).then(
      () => say('Copied what is to be ordered.'),
      () => say('It could not be copied.'),
    )
  const boxes = () => [...(list.current?.querySelectorAll<HTMLElement>('.order-line > input') ?? [])]
  const inHand = () => {
    const row = document.activeElement?.closest<HTMLElement>('.order-line')
    return lines.find(({ id }) => String(id) === row?.dataset.id)
  }
  const withLine = (act: (line: Ordered) => void) => () => {
    const line = inHand()
    if (line) act(line)
    else say('Go to a line first.')
  }
  useCommands([
    { label: 'Add a line', keys: ['A'], run: () => setAdding(true) },
    { label: 'Mark as ordered', keys: ['O'], run: () => mark('ordered') },
    { label: 'Mark as received', keys: ['Y'], run: () => mark('received') },
    { label: 'One more', keys: ['+', '='], run: withLine((line) => change(line, { quantity: line.quantity + 1 })) },
    {
      label: 'One less',
      keys: ['-'],
      run: withLine((line) => line.quantity > 1 && change(line, { quantity: line.quantity - 1 })),
    },
    { label: 'Remove this line', keys: ['Delete'], run: withLine(remove) },
    { label: 'Back to the list', keys: ['Escape'], run: () => go('/') },
  ])

  const rowOf = (line: Ordered) => (
    <OrderRow
      key={`${line.id} ${line.note ?? ''}`}
      line={line}
      chosen={chosen.has(line.id)}
      choose={() => choose(line.id)}
      setQuantity={(quantity) => change(line, { quantity })}
      setNote={(note) => change(line, { note: note.trim() === '' ? undefined : note.trim() })}
      remove={() => remove(line)}
      bookIn={receivedSpring(line) === null ? undefined : () => bookIn(line)}
    />
  )
  return (
    <article className="orders">
      <header className="page-head">
        <h1>Order list</h1>
        <p className="quiet order-date">{today()}</p>
        <p className="head-actions">
          <button type="button" className="plain-button" onClick={() => setAdding(true)}>
            Add a line <kbd>A</kbd>
          </button>
          <button type="button" className="plain-button" disabled={lines.length === 0} onClick={() => void copy()}>
            Copy as text
          </button>
          <button type="button" className="plain-button" disabled={lines.length === 0} onClick={saveCsv}>
            Save as CSV
          </button>
          <button type="button" className="plain-button" disabled={lines.length === 0} onClick={() => print()}>
            Print
          </button>
        </p>
      </header>
      <p className="quiet">{springCautions.order}</p>
      {adding && <AddOrder add={add} leave={() => setAdding(false)} />}
      {orders.error && <p className="problem">{failureText(orders.error)}</p>}
      {orders.isSuccess && lines.length === 0 && !adding && (
        <div className="notice">
          <p>
            Nothing is on the list. Put a spring or a part on it from the page of its caliber, or add a line of your
            own.
          </p>
          <p className="actions">
            <Link href="/" className="plain-button">
              Go to calibers
            </Link>
          </p>
        </div>
      )}
      {lines.length > 0 && (
        <p className="actions mark-actions">
          <button type="button" className="plain-button" disabled={chosen.size === 0} onClick={() => mark('ordered')}>
            Mark as ordered <kbd>O</kbd>
          </button>
          <button type="button" className="plain-button" disabled={chosen.size === 0} onClick={() => mark('received')}>
            Mark as received <kbd>Y</kbd>
          </button>
        </p>
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the arrow keys go along the lines, which are boxes to tick */}
      <div ref={list} onKeyDown={(event: KeyboardEvent) => walkLines(event, boxes())}>
        {orderStates.map((state) => {
          const of = lines.filter((line) => line.state === state)
          return of.length === 0 ? null : (
            <section key={state} className="order-state" aria-labelledby={`orders-${state}`} data-state={state}>
              <h2 id={`orders-${state}`}>
                {headings[state]} <span className="quiet">{of.length}</span>
              </h2>
              {groupOrders(of).map(({ supplier, lines: grouped }) => (
                <div key={supplier}>
                  <h3>{supplier === '' ? 'No supplier chosen' : supplier}</h3>
                  <ul>{grouped.map(rowOf)}</ul>
                </div>
              ))}
            </section>
          )
        })}
      </div>
    </article>
  )
}
