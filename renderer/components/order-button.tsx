import { ListPlus } from 'lucide-react'
import { useRef } from 'react'
import type { NewOrderLine } from '../../core/orders/order-line.ts'
import { sameOrder } from '../../core/orders/same-order.ts'
import { call, useChange } from '../api/hooks.ts'
import { failureText } from './failure-text.ts'
import { say } from './say.ts'
import './order-button.css'

interface OrderButtonProps {
  readonly line: NewOrderLine
  /** What the button says, where the long form would stand on every line of a list. */
  readonly label?: string
}

const most = 9999

/** Puts a line on the order list, or one more of what stands open on it already, and says what was done. */
export const OrderButton = ({ line, label = 'Put on the order list' }: OrderButtonProps) => {
  const saving = useChange('order.save')
  const busy = useRef(false)
  const put = async () => {
    if (busy.current) return
    busy.current = true
    try {
      const { orders } = await call('orders.list', {})
      const there = orders.find((other) => other.state === 'open' && sameOrder(other, line))
      if (there !== undefined && there.quantity >= most) {
        say(`${most} of ${line.what} stand on the order list: it takes no more on one line.`)
      } else if (there === undefined) {
        await saving.mutateAsync({ id: null, line: { ...line, quantity: 1, state: 'open' } })
        say(`Put on the order list: ${line.what}. Ctrl Z takes it back.`)
      } else {
        const { id, ...kept } = there
        const quantity = there.quantity + 1
        await saving.mutateAsync({ id, line: { ...kept, ...line, state: 'open', quantity } })
        say(`On the order list already: now ${quantity} × ${line.what}. Ctrl Z takes it back.`)
      }
    } catch (error) {
      say(failureText(error))
    } finally {
      busy.current = false
    }
  }
  const full = `Put ${line.what} on the order list`
  return (
    <button
      type="button"
      className="text-button order-button"
      aria-label={label === 'Put on the order list' ? undefined : `${label}: ${full}`}
      title={full}
      onClick={() => void put()}
    >
      <ListPlus aria-hidden="true" /> {label}
    </button>
  )
}
