import type { Dispatch } from 'react'
import { columnUnitsOf } from '../../../core/exchange/column-unit.ts'
import type { TableColumn } from '../../../core/exchange/table-column.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { formOrder } from '../../../core/record/form-order.ts'
import { unitName } from '../../../core/wording/unit-name.ts'
import type { TableAction } from './table-state.ts'

interface TableHeadsProps {
  readonly columns: readonly TableColumn[]
  readonly dispatch: Dispatch<TableAction>
}

/** The heads of the columns: what stands under each, and the unit of its bare numbers. */
export const TableHeads = ({ columns, dispatch }: TableHeadsProps) => (
  <>
    {columns.map(({ heading, field, unit }, column) => {
      const units = field === null ? [] : columnUnitsOf(caliberFields[field].kind)
      const place = `column ${column + 1}${heading ? `, headed ${heading}` : ''}`
      return (
        <th
          // biome-ignore lint/suspicious/noArrayIndexKey: a column is its place
          key={column}
          scope="col"
          aria-colindex={column + 2}
          className="table-head"
          data-left-out={field === null}
        >
          {heading !== '' && <span className="table-heading">{heading}</span>}
          <select
            className="entry-input"
            aria-label={`Field of ${place}`}
            aria-keyshortcuts="Alt+ArrowLeft Alt+ArrowRight"
            value={field ?? ''}
            onChange={({ target }) => {
              const key = target.value === '' ? null : (target.value as CaliberFieldKey)
              dispatch({ type: 'column', column, change: { field: key, unit: null } })
            }}
            onKeyDown={(event) => {
              if (!event.altKey || (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight')) return
              event.preventDefault()
              const by = event.key === 'ArrowLeft' ? -1 : 1
              dispatch({ type: 'move-column', column, by })
              const heads = event.currentTarget.closest('tr')?.querySelectorAll<HTMLElement>('.table-head')
              heads?.[column + by]?.querySelector('select')?.focus()
            }}
          >
            <option value="">left out</option>
            {formOrder().map(({ group, label, keys }) => (
              <optgroup key={group} label={label}>
                {keys.map((key) => (
                  <option key={key} value={key}>
                    {caliberFields[key].label}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
          {units.length > 1 && (
            <select
              className="entry-input"
              aria-label={`Unit of the bare numbers in ${place}`}
              value={unit ?? units[0]}
              onChange={({ target }) =>
                dispatch({
                  type: 'column',
                  column,
                  change: { unit: units.find((one) => one === target.value) ?? null },
                })
              }
            >
              {units.map((one) => (
                <option key={one} value={one}>
                  {unitName(one)}
                </option>
              ))}
            </select>
          )}
        </th>
      )
    })}
  </>
)
