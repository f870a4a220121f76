import type { SpringTableReading } from '../../../core/exchange/read-spring-table.ts'
import type { SpringColumn } from '../../../core/exchange/spring-column.ts'
import { type SpringOrder, springOrders } from '../../../core/springs/spring-line.ts'
import { ColumnHead } from './column-heads.tsx'

const shownRows = 8

interface ListMappingProps {
  readonly rows: readonly (readonly string[])[]
  readonly reading: SpringTableReading
  readonly set: (reading: SpringTableReading) => void
  /** The tray or list on which the springs are to stand. */
  readonly name: string
  readonly setName: (name: string) => void
  readonly replace: boolean
  readonly setReplace: (replace: boolean) => void
  readonly trays: readonly string[]
}

/** The columns with one of them changed. What it now holds, no other holds; notes may stand in several. */
const withColumn = (columns: readonly SpringColumn[], at: number, next: SpringColumn): readonly SpringColumn[] =>
  columns.map((one, place) => {
    if (place === at) return next
    return next.kind !== null && next.kind !== 'note' && one.kind === next.kind
      ? { ...one, kind: null, unit: null }
      : one
  })

/** How a list is to be read: what is in each column over its first rows, and what holds for all of it. */
export const ListMapping = ({ rows, reading, set, name, setName, replace, setReplace, trays }: ListMappingProps) => {
  const { columns, headingRows } = reading
  return (
    <>
      <div className="list-settings">
        <label>
          Tray or list
          <input
            type="text"
            list="import-trays"
            autoComplete="off"
            maxLength={200}
            value={name}
            onChange={({ target }) => setName(target.value)}
          />
        </label>
        <datalist id="import-trays">
          {trays.map((tray) => (
            <option key={tray} value={tray} />
          ))}
        </datalist>
        <label>
          Rows of headings
          <input
            type="number"
            min={0}
            max={Math.max(0, rows.length - 1)}
            value={headingRows}
            onChange={({ target }) =>
              set({
                ...reading,
                headingRows: Math.max(0, Math.min(rows.length, Math.floor(Number(target.value)) || 0)),
              })
            }
          />
        </label>
        <label>
          Decimals with
          <select
            value={reading.decimalMark}
            onChange={({ target }) => set({ ...reading, decimalMark: target.value === ',' ? ',' : '.' })}
          >
            <option value=".">a point: 0.105</option>
            <option value=",">a comma: 0,105</option>
          </select>
        </label>
        {columns.some(({ kind }) => kind === 'sizes') && (
          <label>
            Sizes in one cell
            <select
              value={reading.order}
              onChange={({ target }) =>
                set({
                  ...reading,
                  order:
                    (Object.keys(springOrders) as SpringOrder[]).find((one) => one === target.value) ?? reading.order,
                })
              }
            >
              {Object.entries(springOrders).map(([key, { label }]) => (
                <option key={key} value={key}>
                  {label}
                </option>
              ))}
            </select>
          </label>
        )}
        <label className="list-replace">
          <input type="checkbox" checked={replace} onChange={({ target }) => setReplace(target.checked)} />
          These replace what the tray has
        </label>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide list is scrolled with the keys */}
      <section className="list-rows" aria-label="First rows of the list" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <td className="quiet">Row</td>
              {columns.map((column, at) => (
                <ColumnHead
                  // biome-ignore lint/suspicious/noArrayIndexKey: a column is known by its place
                  key={at}
                  column={column}
                  number={at + 1}
                  set={(next) => set({ ...reading, columns: withColumn(columns, at, next) })}
                />
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, Math.min(headingRows, 6) + shownRows).map((row, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place
              <tr key={at} className={at < headingRows ? 'quiet heading-row' : ''}>
                <th scope="row" className="quiet">
                  {at + 1}
                </th>
                {columns.map((_, place) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a cell is known by its place
                  <td key={place}>{row[place] ?? ''}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  )
}
