import type { SpringColumn } from '../../../core/exchange/spring-column.ts'
import { type SpringColumnKind, springColumnKinds } from '../../../core/exchange/spring-headings.ts'
import type { LengthUnit } from '../../../core/quantities/length-units.ts'

const sizes: readonly (SpringColumnKind | null)[] = ['heightMm', 'thicknessMm', 'lengthMm', 'barrelMm']
const units = [
  ['mm', 'mm'],
  ['tenths-mm', 'tenths of a mm'],
  ['hundredths-mm', 'hundredths of a mm'],
  ['micrometre', 'thousandths of a mm'],
  ['inch', 'inches'],
  ['ligne', 'lignes'],
  ['douzieme', 'douzièmes'],
] as const satisfies readonly (readonly [LengthUnit, string])[]

interface ColumnHeadProps {
  readonly column: SpringColumn
  readonly number: number
  readonly set: (column: SpringColumn) => void
}

/** What a column of a list is, and in which unit its bare numbers are. */
export const ColumnHead = ({ column, number, set }: ColumnHeadProps) => {
  const name = `column ${number}${column.heading === '' ? '' : `, headed ${column.heading}`}`
  const { kind } = column
  return (
    <th scope="col">
      <select
        aria-label={`What is in ${name}`}
        value={kind ?? ''}
        onChange={({ target }) => {
          const next = (Object.keys(springColumnKinds) as SpringColumnKind[]).find((one) => one === target.value)
          set({ ...column, kind: next ?? null, unit: next !== undefined && sizes.includes(next) ? column.unit : null })
        }}
      >
        <option value="">left out</option>
        {Object.entries(springColumnKinds).map(([value, label]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
      {sizes.includes(kind) && (
        <select
          aria-label={`Unit of ${name}`}
          value={column.unit ?? 'mm'}
          onChange={({ target }) =>
            set({ ...column, unit: units.find(([unit]) => unit === target.value)?.[0] ?? null })
          }
        >
          {units.map(([unit, label]) => (
            <option key={unit} value={unit}>
              {label}
            </option>
          ))}
        </select>
      )}
    </th>
  )
}
