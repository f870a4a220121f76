import type { ReactNode } from 'react'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { hasFourthArbor } from '../../../core/formulas/fourth-arbor.ts'
import { stagesFromCentre, stagesToCentre } from '../../../core/formulas/train-stages.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { type CountKey, countKeys, isCountKey } from '../../../core/trains/cuttable-counts.ts'

interface MissingTrainProps {
  readonly values: CaliberValues
  readonly unknown: ReadonlySet<CountKey>
  readonly onToggle: (key: CountKey) => void
}

interface Pair {
  readonly above: CountKey
  readonly below: CountKey
}

interface Line {
  readonly name: string
  readonly pairs: readonly Pair[]
  /** What stands behind the pairs. */
  readonly behind?: ReactNode
}

/** The lines as a watchmaker writes them: every arbor stated or looked for has its pair. */
const linesOf = ({ values, unknown, onToggle }: MissingTrainProps): readonly Line[] => {
  const placed: CaliberValues = {
    ...values,
    ...Object.fromEntries(countKeys.filter((key) => unknown.has(key)).map((key) => [key, values[key] ?? 1])),
  }
  const pairsOf = (stages: ReturnType<typeof stagesFromCentre>): Pair[] =>
    stages.flatMap(({ wheel, pinion }) =>
      isCountKey(wheel) && isCountKey(pinion) ? [{ above: wheel, below: pinion }] : [],
    )
  const isThere = ({ above, below }: Pair) => placed[above] !== undefined || placed[below] !== undefined
  const barrel = pairsOf(stagesToCentre(placed))
  const sweep: Pair = { above: 'sweepDriver', below: 'sweepPinion' }
  const fourth = hasFourthArbor(values) !== false || unknown.has('fourthPinion') || unknown.has('fourthWheel')
  return [
    {
      name: 'Going train',
      pairs: pairsOf(stagesFromCentre(placed, fourth)),
      behind: (
        <>
          <span className="missing-sign">× 2 ×</span>
          <Count field="escapeTeeth" values={values} unknown={unknown} onToggle={onToggle} />
        </>
      ),
    },
    ...(values.secondsDisplay === 'centre-indirect' || isThere(sweep) ? [{ name: 'Sweep', pairs: [sweep] }] : []),
    {
      name: 'Motion work',
      pairs: [
        { above: 'minuteWheel', below: 'cannonPinion' },
        { above: 'hourWheel', below: 'minutePinion' },
      ],
    },
    ...(barrel.some(isThere) ? [{ name: 'Barrel', pairs: barrel }] : []),
  ]
}

type CountProps = MissingTrainProps & { readonly field: CountKey }

/** One count, which a press makes unknown or known again. */
const Count = ({ field, values, unknown, onToggle }: CountProps) => {
  const isUnknown = unknown.has(field)
  const { label } = caliberFields[field]
  const stated = values[field]
  return (
    <button
      type="button"
      className="missing-count"
      data-field={field}
      aria-pressed={isUnknown}
      aria-describedby="missing-how"
      onClick={() => onToggle(field)}
    >
      <span className="missing-figure">{isUnknown ? '?' : (stated ?? '–')}</span>
      <span className="missing-label">{label}</span>
    </button>
  )
}

/** The train as on paper, each count a key: what is pressed is looked for. */
export const MissingTrain = (props: MissingTrainProps) => (
  <section className="missing-train" aria-label="The counts as stated">
    {linesOf(props).map(({ name, pairs, behind }) => (
      <div className="missing-line" key={name}>
        <h3>{name}</h3>
        <div className="missing-pairs">
          {pairs.map(({ above, below }, at) => (
            <div className="missing-factor" key={above}>
              {at > 0 && <span className="missing-sign">×</span>}
              <div className="missing-pair">
                <Count {...props} field={above} />
                <Count {...props} field={below} />
              </div>
            </div>
          ))}
          {behind && <div className="missing-factor">{behind}</div>}
        </div>
      </div>
    ))}
  </section>
)
