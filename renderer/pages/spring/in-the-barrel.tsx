import { useState } from 'react'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { lengthFromMass } from '../../../core/formulas/length-from-mass.ts'
import { stripFromPack } from '../../../core/formulas/strip-from-pack.ts'
import { compareStrip, type MeasuredStrip, usualUncertainty } from '../../../core/springs/compare-strip.ts'
import type { SpringEnd } from '../../../core/springs/end-compatibility.ts'
import { meanOfReadings } from '../../../core/springs/mean-of-readings.ts'
import { type LengthWay, lengthWays, observedStrip } from '../../../core/springs/observed-strip.ts'
import { figure } from '../../../core/wording/figure.ts'
import { springCautions } from '../../../core/wording/spring-cautions.ts'
import { stripSentence } from '../../../core/wording/strip-sentence.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { say } from '../../components/say.ts'
import { answerOf, typedField, typedFigure } from '../../components/typed-figure.ts'
import type { SpringSectionProps } from './section-props.ts'
import { StripTable } from './strip-table.tsx'

const ways: Readonly<Record<LengthWay, string>> = {
  'laid-out': 'laid out along a rule',
  weighed: 'weighed',
  'coils-and-pack': 'from coils and pack',
}
const ends = Object.entries(caliberFields.springEnd.choices) as [SpringEnd, string][]
const blank = { height: '', thickness: '', length: '', mass: '', coils: '', pack: '' }

/** What lies in the barrel beside what the maker specified: size by size, and what it does. */
export const InTheBarrel = ({ caliber: { values } }: SpringSectionProps) => {
  const [texts, setTexts] = useState(blank)
  const [way, setWay] = useState<LengthWay>('laid-out')
  const [end, setEnd] = useState<SpringEnd | ''>('')
  const type = (name: keyof typeof blank) => (text: string) => setTexts((before) => ({ ...before, [name]: text }))

  const height = typedField('springHeightMm', texts.height)
  // Several readings of the micrometer may be typed one after the other; between them stand spaces or semicolons.
  const readings = texts.thickness
    .split(/[;\s]+/)
    .filter((text) => text !== '')
    .map((text) => typedField('springThicknessMm', text))
  const mean = meanOfReadings(
    readings.flatMap(({ value }) => value ?? []),
    usualUncertainty.thicknessMm,
  )
  const thickness = {
    ...typedField('springThicknessMm', ''),
    text: texts.thickness,
    problem: readings.find(({ problem }) => problem !== '')?.problem ?? '',
    echo:
      mean === null || readings.length < 2 ? '' : `mean ${figure(mean.mean, 4)} mm, ${figure(mean.spread, 4)} mm apart`,
  }
  const length = typedField('springLengthMm', texts.length)
  const mass = typedFigure('Weight', texts.mass, ['mg'])
  const coils = typedFigure('Coils let down', texts.coils)
  const pack = typedFigure('Width of the pack', texts.pack, ['mm'])
  const lengthOf = (): number | undefined => {
    if (way === 'laid-out') return length.value
    const h = height.value ?? values.springHeightMm
    const e = mean?.mean ?? values.springThicknessMm
    if (way === 'weighed') {
      return mass.value === undefined || h === undefined || e === undefined
        ? undefined
        : lengthFromMass(mass.value, { heightMm: h, thicknessMm: e })
    }
    return coils.value === undefined || pack.value === undefined || values.barrelInsideMm === undefined
      ? undefined
      : stripFromPack(values.barrelInsideMm, pack.value, coils.value).lengthMm
  }
  const reckoned = answerOf(lengthOf)
  const lengthMm = 'found' in reckoned ? reckoned.found : undefined
  const strip: MeasuredStrip = {
    ...(height.value !== undefined && { heightMm: height.value }),
    ...(mean !== null && { thicknessMm: mean.mean }),
    ...(lengthMm !== undefined && { lengthMm }),
    ...(end !== '' && { end }),
  }
  const uncertainty = { ...usualUncertainty, thicknessMm: mean?.uncertaintyMm ?? usualUncertainty.thicknessMm }
  const compared = compareStrip(values, strip, uncertainty)
  const measured = Object.keys(strip).length > 0
  const copy = () =>
    navigator.clipboard.writeText(JSON.stringify(observedStrip(strip, uncertainty, way), null, 2)).then(
      () => say('Copied as bench observations.'),
      () => say('It could not be copied.'),
    )
  return (
    <section className="in-the-barrel" aria-labelledby="in-the-barrel">
      <h2 id="in-the-barrel">What is in the barrel?</h2>
      <p className="quiet">{springCautions.handling}</p>
      <fieldset className="bench-fields tried" aria-label="Strip as measured">
        <BenchField
          label="Height"
          name="stripHeight"
          unit="mm"
          figure={height}
          onType={type('height')}
          hint="micrometer"
        />
        <BenchField
          label="Thickness"
          name="stripThickness"
          unit="mm"
          figure={thickness}
          onType={type('thickness')}
          hint="several readings, clean flat strip"
        />
        <label className="bench-field">
          Length
          <select value={way} onChange={({ target }) => setWay(target.value as LengthWay)}>
            {(Object.keys(lengthWays) as LengthWay[]).map((key) => (
              <option key={key} value={key}>
                {ways[key]}
              </option>
            ))}
          </select>
        </label>
        {way === 'laid-out' && (
          <BenchField
            label="Length"
            name="stripLength"
            unit="mm"
            figure={length}
            onType={type('length')}
            hint="eye to hook"
          />
        )}
        {way === 'weighed' && (
          <BenchField
            label="Weight"
            name="stripMass"
            unit="mg"
            figure={mass}
            onType={type('mass')}
            hint="steel, 7.85 g/cm³, bare"
          />
        )}
        {way === 'coils-and-pack' && (
          <>
            <BenchField
              label="Coils let down"
              name="stripCoils"
              unit=""
              figure={coils}
              onType={type('coils')}
              hint="with parts of a coil"
            />
            <BenchField
              label="Width of the pack"
              name="stripPack"
              unit="mm"
              figure={pack}
              onType={type('pack')}
              hint="wall to innermost coil"
            />
          </>
        )}
        <label className="bench-field">
          End
          <select value={end} onChange={({ target }) => setEnd(target.value as SpringEnd | '')}>
            <option value="">not looked at</option>
            {ends.map(([key, label]) => (
              <option key={key} value={key}>
                {label}
              </option>
            ))}
          </select>
        </label>
      </fieldset>
      {'refused' in reckoned && (
        <p className="problem" role="alert">
          {reckoned.refused}
        </p>
      )}
      <p className="strip-verdict" role="status">
        {stripSentence(compared)}
      </p>
      {measured && (
        <>
          <StripTable compared={compared} specifiedEnd={values.springEnd} end={end === '' ? undefined : end} />
          <p className="actions">
            <button type="button" className="plain-button" onClick={() => void copy()}>
              Copy as bench observations
            </button>
          </p>
        </>
      )}
    </section>
  )
}
