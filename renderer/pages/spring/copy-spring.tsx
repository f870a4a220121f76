import { Copy } from 'lucide-react'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { type SpringOrder, springOrders } from '../../../core/springs/spring-line.ts'
import { useCommands } from '../../components/commands.ts'
import { useCopiedSpring } from '../../components/use-copied-spring.ts'

const orders = Object.entries(springOrders) as readonly (readonly [SpringOrder, { readonly label: string }])[]

/** Copies the spring as its owner writes springs; the way of writing is remembered. */
export const CopySpring = ({ values, name }: { values: CaliberValues; name: string }) => {
  const { writing, prefer, text, copy } = useCopiedSpring(values, name)
  useCommands([{ label: 'Copy the spring', keys: ['C'], run: copy }])
  return (
    <div className="copy-spring copy">
      <button type="button" className="plain-button" onClick={copy}>
        <Copy aria-hidden="true" /> Copy <kbd>C</kbd>
      </button>
      <output className="copied-text">{text}</output>
      <p className="copy-choices">
        <label>
          Order of figures{' '}
          <select
            value={writing.order}
            onChange={(event) => {
              const chosen = orders.find(([order]) => order === event.target.value)
              if (chosen) prefer({ order: chosen[0] })
            }}
          >
            {orders.map(([order, { label }]) => (
              <option key={order} value={order}>
                {label}
              </option>
            ))}
          </select>
        </label>
        <label>
          <input
            type="checkbox"
            checked={writing.decimalMark === ','}
            onChange={(event) => prefer({ decimalMark: event.target.checked ? ',' : '.' })}
          />{' '}
          Decimal comma
        </label>
        <label>
          <input
            type="checkbox"
            checked={writing.withName}
            onChange={(event) => prefer({ withName: event.target.checked })}
          />{' '}
          With the caliber
        </label>
      </p>
    </div>
  )
}
