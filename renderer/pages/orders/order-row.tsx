import { Minus, Plus } from 'lucide-react'
import { useState } from 'react'
import type { CallOutput } from '../../../core/api/contract.ts'

export type Ordered = CallOutput<'orders.list'>['orders'][number]

interface OrderRowProps {
  readonly line: Ordered
  readonly chosen: boolean
  readonly choose: () => void
  readonly setQuantity: (quantity: number) => void
  readonly setNote: (note: string) => void
  readonly remove: () => void
  /** Books what was received into the tray; absent where there is nothing to book. */
  readonly bookIn: (() => void) | undefined
}

/** One line of the order list: how many, what, for which caliber, and where its specification stands. */
export const OrderRow = ({ line, chosen, choose, setQuantity, setNote, remove, bookIn }: OrderRowProps) => {
  const [note, typeNote] = useState(line.note ?? '')
  const number = line.supplierRef ?? line.number
  const place = [line.source, line.page && `p. ${line.page}`].filter(Boolean).join(', ')
  const name = line.caliber && `${line.caliber.maker} ${line.caliber.designation}`.trim()
  return (
    <li className="order-line" data-id={line.id} data-state={line.state}>
      <input type="checkbox" checked={chosen} onChange={choose} aria-label={`Choose ${line.what}`} />
      <span className="order-quantity">
        <button
          type="button"
          aria-label={`One less of ${line.what}`}
          disabled={line.quantity <= 1}
          onClick={() => setQuantity(line.quantity - 1)}
        >
          <Minus aria-hidden="true" />
        </button>
        <output aria-label={`Quantity of ${line.what}`}>{line.quantity}</output>
        <button type="button" aria-label={`One more of ${line.what}`} onClick={() => setQuantity(line.quantity + 1)}>
          <Plus aria-hidden="true" />
        </button>
      </span>
      <div className="order-what">
        <p tabIndex={-1} className="order-text">
          {line.what}
        </p>
        <p className="quiet">
          {number !== undefined && <span>no. {number}</span>}
          {name !== undefined && <span>for {name}</span>}
          {place !== '' && <span>specified in {place}</span>}
          {line.bookedIn === true && <span>booked into the tray</span>}
        </p>
        <label className="order-note">
          <span className="quiet">Note</span>
          <input
            type="text"
            maxLength={1000}
            value={note}
            onChange={(event) => typeNote(event.target.value)}
            onBlur={() => note !== (line.note ?? '') && setNote(note)}
          />
        </label>
      </div>
      <span className="order-actions">
        {bookIn && (
          <button type="button" className="text-button" onClick={bookIn}>
            Book into the tray
          </button>
        )}
        <button type="button" className="text-button" aria-label={`Remove ${line.what}`} onClick={remove}>
          Remove
        </button>
      </span>
    </li>
  )
}
