import { useId, useState } from 'react'
import type { CaliberValues } from '../../core/record/caliber.ts'
import { barrelTurnHours } from '../../core/springs/barrel-turn.ts'
import { coilPacks } from '../../core/springs/coil-radii.ts'
import { fitSpring } from '../../core/springs/fit.ts'
import { figure } from '../../core/wording/figure.ts'
import { woundText } from '../../core/wording/spring-bench.ts'
import { BarrelViews } from './barrel-views.tsx'
import { drawnBarrel } from './drawn-barrel.ts'

const decimals = (value: number | null, places: number, unit = '') =>
  value === null ? '–' : `${value.toFixed(places)}${unit}`

/** Steps of the slider in a turn. */
const stepsPerTurn = 10

interface BarrelSectionProps {
  readonly values: CaliberValues
  /** Whether the figures stand beside it, or are said elsewhere on the page. */
  readonly withFacts?: boolean
}

/** The barrel seen from above and cut through, with the strip let down, wound, or any turns between; printed in both states. */
export const BarrelSection = ({ values, withFacts = true }: BarrelSectionProps) => {
  const [step, setStep] = useState(0)
  const id = useId()
  const barrel = drawnBarrel(values)
  if (barrel === null) return null
  const { turns, sizes } = barrel
  const steps = Math.ceil(turns * stepsPerTurn)
  const turnsWound = Math.min(step / stepsPerTurn, turns)
  const hoursPerTurn = barrelTurnHours(values)
  const state = woundText(turnsWound, turns, hoursPerTurn)
  const packs = coilPacks(sizes, turnsWound)
  const where = `${figure(packs.hub.coils, 1)} coils round the hub, ${figure(packs.wall.coils, 1)} against the wall`

  const fit = fitSpring(values)
  const facts = [
    ['Coils let down', decimals(fit.coilsDown, 2)],
    ['Coils wound', decimals(fit.coilsWound, 2)],
    ['Turns of the barrel', decimals(fit.turns, 2)],
    ['Space filled', fit.fill === null ? '–' : decimals(fit.fill * 100, 1, ' %')],
    ['Best length', decimals(fit.bestLengthMm, 0, ' mm')],
    ['Clearance in height', decimals(fit.heightClearanceMm, 2, ' mm')],
  ] as const
  const words = facts.map(([label, value]) => `${label} ${value}`).join(', ')
  const alternative = `Barrel to scale: inside ${barrel.drumInsideMm} mm, hub ${sizes.barrelArborMm} mm. ${words}.`
  return (
    <figure className={withFacts ? 'drawing barrel-drawing' : 'drawing barrel-drawing alone'}>
      <div className="barrel-now">
        <BarrelViews
          barrel={barrel}
          turnsWound={turnsWound}
          title={`${alternative} Drawn ${state}: ${where}.`}
          titleId={`${id}-now`}
        />
      </div>
      <div className="barrel-ends">
        {[0, turns].map((at) => (
          <div key={at}>
            <BarrelViews
              barrel={barrel}
              turnsWound={at}
              title={at === 0 ? 'Let down' : 'Wound'}
              titleId={`${id}-${at === 0 ? 'down' : 'wound'}`}
            />
            <p>{woundText(at, turns, hoursPerTurn)}</p>
          </div>
        ))}
      </div>
      <div className="barrel-side">
        <label className="wind">
          <span>Let down</span>
          <input
            type="range"
            min="0"
            max={steps}
            value={Math.min(step, steps)}
            aria-label="Turns wound"
            aria-valuetext={state}
            onChange={(event) => setStep(Number(event.target.value))}
          />
          <span>Wound</span>
        </label>
        <p className="wound-state">
          <strong>{state}</strong>
          <span className="quiet">{where}</span>
        </p>
        {withFacts && (
          <dl className="facts">
            {facts.map(([label, value]) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        )}
      </div>
      <figcaption>
        Barrel to scale{barrel.barrelDepthMm === undefined ? '' : ', from above and cut through'}; coils lie as closed
        rings, so turns are theoretical ones.
      </figcaption>
    </figure>
  )
}
