import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { type ListColumn, type ListKey, listFields } from '../../../core/fields/list-fields.ts'
import { orderOfPart } from '../../../core/orders/order-of-part.ts'
import { formatLength } from '../../../core/quantities/format-length.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { OrderButton } from '../../components/order-button.tsx'
import { fieldPlace } from '../../components/use-sought-field.ts'

const keys = Object.keys(listFields) as readonly ListKey[]

const cellText = (column: ListColumn, value: unknown): string => {
  if (value === undefined || value === '') return ''
  if (Array.isArray(value)) return value.join(', ')
  if (column.kind === 'length' && typeof value === 'number') return formatLength(value, 'mm')
  return column.choices?.[String(value)] ?? String(value)
}

interface ListProps {
  readonly list: ListKey
  readonly lines: readonly object[]
  /** What can be done with a line, by its place; in the order of the lines. */
  readonly actions?: readonly ReactNode[] | undefined
}

const List = ({ list, lines, actions }: ListProps) => {
  const filled = Object.entries<ListColumn>(listFields[list].columns).filter(([name]) =>
    lines.some((line) => cellText(listFields.parts.columns.part, Reflect.get(line, name)) !== ''),
  )
  return (
    <table>
      <thead>
        <tr>
          {list === 'stripOrder' && <th scope="col">Step</th>}
          {filled.map(([name, { label, kind }]) => (
            <th key={name} scope="col" className={kind === 'count' || kind === 'length' ? 'figure' : undefined}>
              {label}
            </th>
          ))}
          {actions && (
            <th scope="col" className="order-cell">
              Order list
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {lines.map((line, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no name of their own and do not move while read
          <tr key={index}>
            {list === 'stripOrder' && <td className="quiet">{index + 1}</td>}
            {filled.map(([name, column]) => (
              <td key={name} className={column.kind === 'count' || column.kind === 'length' ? 'figure' : undefined}>
                {cellText(column, Reflect.get(line, name))}
              </td>
            ))}
            {actions && <td className="order-cell">{actions[index]}</td>}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

interface CaliberListsProps {
  readonly id: number
  readonly lists: Caliber['lists']
  /** What the caliber states itself; the other lists are those of its base. */
  readonly own: Caliber['lists']
  readonly base: string | undefined
  readonly name: { readonly maker: string; readonly designation: string }
}

/** Jewels, oiling, depths, parts and strip order; the lists not yet entered are named in one line. */
export const CaliberLists = ({ id, lists, own, base, name }: CaliberListsProps) => {
  const listOf = own.parts.length > 0 ? `${name.maker} ${name.designation}` : (base ?? 'its base')
  const toOrder = lists.parts.map((part) => (
    <OrderButton key={`${part.part} ${part.number}`} line={orderOfPart(part, name, listOf)} label="Order" />
  ))
  const empty = keys.filter((key) => lists[key].length === 0)
  return (
    <div className="lists">
      {keys
        .filter((key) => lists[key].length > 0)
        .map((key) => (
          <section key={key} id={fieldPlace(key)} tabIndex={-1} className={`list list-${key}`}>
            <h2>
              {listFields[key].label}
              {own[key].length === 0 && <span className="inherited-from"> from {base ?? 'its base'}</span>}
            </h2>
            <List list={key} lines={lists[key]} actions={key === 'parts' ? toOrder : undefined} />
          </section>
        ))}
      {empty.length > 0 && (
        <p className="quiet not-entered">
          Not entered:{' '}
          {empty.map((key, index) => (
            <span key={key}>
              {index > 0 && ', '}
              <Link id={fieldPlace(key)} href={`/caliber/${id}/edit/${key}`}>
                {listFields[key].label.toLowerCase()}
              </Link>
            </span>
          ))}
          .
        </p>
      )}
    </div>
  )
}
