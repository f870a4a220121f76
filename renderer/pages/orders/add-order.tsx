import { type FormEvent, useState } from 'react'
import type { NewOrderLine } from '../../../core/orders/order-line.ts'

/** A line of one's own: a part or a spring that no caliber of the library has put on the list. */
export const AddOrder = ({ add, leave }: { add: (line: NewOrderLine) => void; leave: () => void }) => {
  const [what, setWhat] = useState('')
  const [number, setNumber] = useState('')
  const [supplier, setSupplier] = useState('')
  const [problem, setProblem] = useState('')
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (what.trim() === '') {
      setProblem('Say what is to be ordered.')
      return
    }
    add({
      kind: 'part',
      what: what.trim(),
      ...(number.trim() === '' ? {} : { number: number.trim() }),
      ...(supplier.trim() === '' ? {} : { tray: supplier.trim() }),
    })
  }
  return (
    <form
      className="order-form"
      onSubmit={submit}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return
        event.stopPropagation()
        leave()
      }}
    >
      <label>
        What
        {/* biome-ignore lint/a11y/noAutofocus: the form opens at the owner's wish, to be typed into */}
        <input autoFocus maxLength={400} value={what} onChange={(event) => setWhat(event.target.value)} />
      </label>
      <label>
        Number
        <input maxLength={200} value={number} onChange={(event) => setNumber(event.target.value)} />
      </label>
      <label>
        Supplier
        <input maxLength={200} value={supplier} onChange={(event) => setSupplier(event.target.value)} />
      </label>
      <p className="actions">
        <button type="submit" className="plain-button chief">
          Put on the list
        </button>
        <button type="button" className="plain-button" onClick={leave}>
          Leave it
        </button>
      </p>
      {problem !== '' && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </form>
  )
}
