import { useMemo, useState } from 'react'
import { useLocation } from 'wouter'
import { torqueFullWindRatio, torqueRateRatio } from '../../../core/formulas/spring-torque.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { labelOf } from '../../../core/record/label-of.ts'
import { fitWorking } from '../../../core/springs/fit-working.ts'
import { torqueSentence } from '../../../core/wording/spring-bench.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { useCommands } from '../../components/commands.ts'
import { answerOf } from '../../components/typed-figure.ts'
import { walkFields } from '../../components/walk-fields.ts'
import { BarrelSection } from '../../drawings/barrel-section.tsx'
import { BenchFigures } from './bench-figures.tsx'
import type { SpringSectionProps } from './section-props.ts'
import { type TriedTexts, trySizes } from './tried-sizes.ts'

const stripOf = ({ springHeightMm, springThicknessMm, springLengthMm }: CaliberValues) =>
  springHeightMm === undefined || springThicknessMm === undefined || springLengthMm === undefined
    ? null
    : { heightMm: springHeightMm, thicknessMm: springThicknessMm, lengthMm: springLengthMm }

/** What another strip does to the torque, where it is another one than specified. */
const torqueOf = (tried: CaliberValues, specified: CaliberValues): string | null => {
  const [strip, asSpecified] = [stripOf(tried), stripOf(specified)]
  if (strip === null || asSpecified === null) return null
  if (Object.entries(strip).every(([size, mm]) => mm === asSpecified[size as keyof typeof strip])) return null
  return torqueSentence(torqueFullWindRatio(strip, asSpecified), torqueRateRatio(strip, asSpecified))
}

/** Barrel and strip at the bench: as specified, or as measured, with all that follows and a drawing to scale. */
export const BarrelBench = ({ caliber: { values: specified }, caliberId }: SpringSectionProps) => {
  const [, go] = useLocation()
  const [texts, setTexts] = useState<TriedTexts>({})
  const { sizes, values } = useMemo(() => trySizes(specified, texts), [specified, texts])
  const changed = sizes.some((size) => size.changed)
  const toSpecification = () => setTexts({})
  useCommands(changed ? [{ label: 'Back to the specification', keys: ['X'], run: toSpecification }] : [])
  const unread = sizes.find(({ figure }) => figure.problem !== '')
  const answer = unread ? { refused: unread.figure.problem } : answerOf(() => fitWorking(values))
  const torque = 'found' in answer ? torqueOf(values, specified) : null
  const asked = sizes.filter(({ key }) => key !== 'bridleThicknessMm' || specified.springEnd === 'slipping-bridle')
  return (
    <section className="barrel-bench" aria-labelledby="barrel-bench">
      <h2 id="barrel-bench">Barrel bench</h2>
      <fieldset
        className="bench-fields tried"
        data-changed={changed}
        aria-label="Sizes to try"
        onKeyDown={walkFields(() => go(`/caliber/${caliberId}`))}
      >
        {asked.map(({ key, figure, changed: tried }) => {
          const stated = specified[key]
          const from = stated === undefined ? 'not stated' : `specified ${stated} mm`
          return (
            <BenchField
              key={key}
              label={labelOf(key)}
              name={key}
              unit="mm"
              figure={figure}
              hint={tried ? `as measured; ${from}` : stated === undefined ? 'not stated: measure it' : 'as specified'}
              onType={(text) => setTexts((before) => ({ ...before, [key]: text }))}
            />
          )
        })}
      </fieldset>
      {changed && (
        <p className="tried-note">
          <strong>Tried with other sizes than specified.</strong> Nothing of it is kept in the library.{' '}
          <button type="button" className="plain-button" onClick={toSpecification}>
            Back to the specification <kbd>X</kbd>
          </button>
        </p>
      )}
      {'refused' in answer ? (
        <p className="problem" role="alert">
          {answer.refused}
        </p>
      ) : (
        <div className="bench-columns">
          <BarrelSection values={values} withFacts={false} />
          <div>
            {torque !== null && <p className="torque">{torque}</p>}
            <BenchFigures values={values} lines={answer.found} />
          </div>
        </div>
      )}
    </section>
  )
}
