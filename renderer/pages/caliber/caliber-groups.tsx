import type { CaliberEntry, Source } from '../../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { formOrder } from '../../../core/record/form-order.ts'
import { originOf } from '../../../core/record/inherit.ts'
import type { EntryProblem } from '../../../core/record/read-entry.ts'
import type { Reading } from '../../../core/record/reading.ts'
import type { ProofReport } from '../../../core/wording/proof-report.ts'
import { wordProblem } from '../../../core/wording/quantity-problem.ts'
import { ValueCell } from '../../components/value-cell.tsx'
import { worstOf } from '../../components/worst-of.ts'

interface CaliberGroupsProps {
  readonly id: number
  /** The field that one came for: shown even where it is asked of few calibers. */
  readonly at: string | undefined
  readonly entry: CaliberEntry
  readonly caliber: Caliber
  readonly problems: readonly EntryProblem[]
  readonly reports: readonly ProofReport[]
  readonly sources: readonly Source[]
}

/** Said elsewhere on the page. */
const saidAbove = new Set<CaliberFieldKey>(['maker', 'designation', 'alsoKnownAs', 'basedOn', 'notes'])

/** Asked of few calibers: shown where stated, not as a gap where not. */
const special = new Set<CaliberFieldKey>([
  'lengthMm',
  'widthMm',
  'intermediatePinion',
  'intermediateWheel',
  'fifthPinion',
  'fifthWheel',
  'hoursPerCentreTurn',
  'sweepDriver',
  'sweepPinion',
  'bridleThicknessMm',
  'springGauge',
  'stopWorkTurns',
])

/** Every field by group, with value, unit and source. */
export const CaliberGroups = ({ id, at, caliber, problems, reports, sources }: CaliberGroupsProps) => {
  const readingsOf = (key: CaliberFieldKey): readonly Reading[] => caliber.readings[key] ?? []
  const problemOf = (key: CaliberFieldKey): string | null => {
    const found = problems.find(({ field }) => field === key)
    return found ? wordProblem(caliberFields[key].label, found.problem) : null
  }
  return (
    <div className="groups">
      {formOrder().map(({ group, label, keys }) => {
        const shown = keys.filter(
          (key) =>
            !saidAbove.has(key) &&
            (!special.has(key) || key === at || readingsOf(key).length > 0 || problemOf(key) !== null),
        )
        if (shown.length === 0) return null
        return (
          <section key={group} className="group">
            <h2>{label}</h2>
            <dl>
              {shown.map((key) => (
                <ValueCell
                  key={key}
                  id={id}
                  field={key}
                  readings={readingsOf(key)}
                  inheritedFrom={originOf(caliber, key)?.values.designation}
                  problem={problemOf(key)}
                  outcome={worstOf(key, reports)}
                  sources={sources}
                />
              ))}
            </dl>
          </section>
        )
      })}
    </div>
  )
}
