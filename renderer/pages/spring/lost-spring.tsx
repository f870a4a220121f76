import { useState } from 'react'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { orderOfStockSpring } from '../../../core/orders/order-of-stock-spring.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { labelOf } from '../../../core/record/label-of.ts'
import { barrelTurnHours } from '../../../core/springs/barrel-turn.ts'
import { lostSpring, type StockStep } from '../../../core/springs/lost-spring.ts'
import { springLine } from '../../../core/springs/spring-line.ts'
import { figure } from '../../../core/wording/figure.ts'
import { lostSpringCaution, lostSpringRemark } from '../../../core/wording/lost-spring-remark.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { OrderButton } from '../../components/order-button.tsx'
import { answerOf, typedField, typedFigure } from '../../components/typed-figure.ts'
import type { SpringSectionProps } from './section-props.ts'
import { TrayRanking } from './tray-ranking.tsx'

const asked = ['barrelInsideMm', 'barrelArborMm', 'barrelDepthMm', 'goingHours'] as const satisfies CaliberFieldKey[]
type Asked = (typeof asked)[number]
const hints: Readonly<Record<Asked, string>> = {
  barrelInsideMm: 'wall to wall, where the spring lies',
  barrelArborMm: 'on the hub, where the spring hooks, not the pivot',
  barrelDepthMm: 'from the lid’s seat to outside the floor, less the floor',
  goingHours: 'as stated for the caliber',
}

const StepRow = ({ name, step, hours }: { name: string; step: StockStep; hours: number | null }) => (
  <tr>
    <th scope="row">{name}</th>
    <td>{figure(step.thicknessMm, 4)} mm</td>
    <td>{figure(step.lengthMm, 0)} mm</td>
    <td>{figure(step.turns, 2)}</td>
    <td>{hours === null ? '–' : `${figure(step.turns * hours, 1)} h`}</td>
  </tr>
)

/** A spring that is lost, estimated from its barrel and the hours that the movement went. */
export const LostSpring = ({ caliber: { values: stated }, name }: SpringSectionProps) => {
  const [texts, setTexts] = useState<{ readonly [K in Asked | 'turns']?: string }>({})
  const [inTray, setInTray] = useState(false)
  const figures = asked.map((key) => ({ key, figure: typedField(key, texts[key] ?? String(stated[key] ?? '')) }))
  const turns = typedFigure('Theoretical turns', texts.turns ?? '')
  const values: CaliberValues = figures.reduce<CaliberValues>((so, { key, figure: { value } }) => {
    const { [key]: _, ...others } = so
    return value === undefined ? others : { ...others, [key]: value }
  }, stated)
  const answer = answerOf(() => lostSpring(values, turns.value))
  const estimate = 'found' in answer ? answer.found : null
  const hours = barrelTurnHours(values)
  const asSpecified: CaliberValues | null = estimate && {
    ...values,
    springThicknessMm: estimate.thicknessMm,
    springLengthMm: estimate.lengthMm,
    ...(estimate.heightMm !== null && { springHeightMm: estimate.heightMm }),
  }
  return (
    <section className="lost-spring" aria-labelledby="lost-spring">
      <h2 id="lost-spring">Lost spring</h2>
      <p className="quiet">{lostSpringCaution}</p>
      <fieldset className="bench-fields tried" aria-label="Barrel as measured">
        {figures.map(({ key, figure: typed }) => (
          <BenchField
            key={key}
            label={labelOf(key)}
            name={`lost-${key}`}
            unit={key === 'goingHours' ? 'h' : 'mm'}
            figure={typed}
            hint={hints[key]}
            onType={(text) => setTexts((before) => ({ ...before, [key]: text }))}
          />
        ))}
        <BenchField
          label="Theoretical turns"
          name="lost-turns"
          unit=""
          figure={turns}
          hint="where they are known; else from the hours"
          onType={(text) => setTexts((before) => ({ ...before, turns: text }))}
        />
      </fieldset>
      {'refused' in answer && (
        <p className="problem" role="alert">
          {answer.refused}
        </p>
      )}
      {'found' in answer && estimate === null && (
        <p>Measure the inside of the barrel first: everything else rests on it.</p>
      )}
      {estimate !== null && asSpecified !== null && (
        <>
          <p className="lost-line">
            about{' '}
            {springLine(
              {
                heightMm: estimate.heightMm ?? undefined,
                thicknessMm: estimate.thicknessMm,
                lengthMm: Math.round(estimate.lengthMm),
              },
              'height-thickness-length',
            )}{' '}
            <span className="unit">mm, estimated</span>
          </p>
          <table className="strip-sizes">
            <thead>
              <tr>
                <th scope="col">Stock step</th>
                <th scope="col">Thickness</th>
                <th scope="col">Best length</th>
                <th scope="col">Turns</th>
                <th scope="col">Hours</th>
              </tr>
            </thead>
            <tbody>
              {estimate.thinner && <StepRow name="one thinner" step={estimate.thinner} hours={hours} />}
              <StepRow name="nearest" step={estimate} hours={hours} />
              <StepRow name="one thicker" step={estimate.thicker} hours={hours} />
            </tbody>
          </table>
          <p className="quiet">
            Before rounding: {figure(estimate.exact.thicknessMm, 4)} mm thick, {figure(estimate.exact.lengthMm, 1)} mm
            long. Turns are theoretical.
          </p>
          <ul className="lost-remarks">
            {estimate.remarks.map((remark) => (
              <li key={remark.code}>{lostSpringRemark(remark)}</li>
            ))}
          </ul>
          <p className="actions">
            <button type="button" className="plain-button" aria-expanded={inTray} onClick={() => setInTray(!inTray)}>
              Look in the tray
            </button>
            {estimate.heightMm !== null && (
              <OrderButton
                line={orderOfStockSpring(
                  {
                    heightMm: estimate.heightMm,
                    thicknessMm: estimate.thicknessMm,
                    lengthMm: Math.round(estimate.lengthMm),
                  },
                  stated,
                  'estimate',
                )}
              />
            )}
          </p>
          {inTray && <TrayRanking values={asSpecified} name={name} against="Estimated" />}
        </>
      )}
    </section>
  )
}
