import { figure } from '../../../core/wording/figure.ts'
import { type StoredSpring, springColumns, springText } from './spring-columns.ts'

/** More than this is no list to carry to a drawer. */
const printedAtMost = 2_000

/** The springs found, as a table on paper: all of them, not only those in sight. */
export const PrintedSprings = ({ springs }: { readonly springs: readonly StoredSpring[] }) => (
  <div className="printed-springs">
    <table>
      <thead>
        <tr>
          {springColumns.map(({ key, label, unit }) => (
            <th key={key} scope="col" data-part={key}>
              {label} {unit && <span className="unit">{unit}</span>}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {springs.slice(0, printedAtMost).map((spring) => (
          <tr key={spring.id}>
            {springColumns.map(({ key }) => (
              <td key={key} data-part={key}>
                {springText(spring, key)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
    {springs.length > printedAtMost && (
      <p>
        The first {figure(printedAtMost)} of {figure(springs.length)} springs found; search first for those that are to
        be printed.
      </p>
    )}
  </div>
)
