import type { CaliberValues } from '../../../core/record/caliber.ts'
import { bestFill, fillAllowance } from '../../../core/springs/fill-verdict.ts'
import type { FitLine } from '../../../core/springs/fit-working.ts'
import { sensitivities } from '../../../core/springs/sensitivity.ts'
import { usableTurns } from '../../../core/springs/usable-turns.ts'
import { fitLineNames, sensitivityLine, usableTurnsSentence, waitsFor } from '../../../core/wording/spring-bench.ts'
import { Working } from '../../components/working.tsx'

const [usualFrom, usualTo] = [bestFill - fillAllowance.usual, bestFill + fillAllowance.usual]

/** How much of the free space the strip takes, against the usual band. */
const FillBar = ({ fill }: { fill: number }) => (
  <span className="fill-bar" aria-hidden="true">
    <span className="fill-usual" style={{ left: `${usualFrom * 100}%`, width: `${(usualTo - usualFrom) * 100}%` }} />
    <span className="fill-taken" style={{ width: `${Math.min(1, fill) * 100}%` }} />
  </span>
)

const usualFill = `usual ${usualFrom.toFixed(2)} to ${usualTo.toFixed(2)}`

/** What follows from the sizes, each figure with its working; and what a small error in each would do. */
export const BenchFigures = ({ values, lines }: { values: CaliberValues; lines: readonly FitLine[] }) => {
  const turns = lines.find(({ key }) => key === 'turns')
  const errors = sensitivities(values)
  return (
    <>
      <dl className="bench-figures" aria-label="What follows">
        {lines.map((line) => (
          <div key={line.key}>
            <dt>{fitLineNames[line.key]}</dt>
            <dd>
              {'working' in line ? (
                <Working step={line.working} />
              ) : (
                <span className="quiet">{waitsFor(line.missing)}</span>
              )}
              {line.key === 'fill' && 'value' in line && (
                <>
                  <FillBar fill={line.value} />
                  <span className="quiet">{usualFill}</span>
                </>
              )}
              {line.key === 'turns' && turns !== undefined && 'value' in turns && (
                <span className="usable">
                  <span className="quiet">Usable turns</span> {usableTurnsSentence(usableTurns(turns.value, values))}
                </span>
              )}
            </dd>
          </div>
        ))}
      </dl>
      <p className="quiet bench-note">
        Ring model: coils are counted as closed rings, so these are theoretical (development) turns.
      </p>
      {errors.length > 0 && (
        <section className="sensitivity" aria-labelledby="sensitivity">
          <h3 id="sensitivity">What a small error does</h3>
          <ul>
            {errors.map((error) => (
              <li key={error.field}>{sensitivityLine(error)}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}
