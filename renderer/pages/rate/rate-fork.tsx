import { useState } from 'react'
import { liftAngleOfFork } from '../../../core/formulas/lift-angle-of-fork.ts'
import { figure } from '../../../core/wording/figure.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { answerOf, typedFigure } from '../../components/typed-figure.ts'

/** The lift angle at the balance from what older books give: the angle at the fork and the ratio of the levers. */
export const ForkPart = () => {
  const [fork, setFork] = useState({ angle: '', ratio: '' })
  const forkAngle = typedFigure('Angle of the fork', fork.angle, ['°', 'deg'])
  const ratio = typedFigure('Ratio', fork.ratio)
  const ofFork =
    forkAngle.value === undefined || ratio.value === undefined
      ? null
      : answerOf(() => liftAngleOfFork(forkAngle.value ?? 0, ratio.value ?? 0))
  return (
    <section aria-labelledby="from-fork">
      <h2 id="from-fork">Lift angle from the fork</h2>
      <p className="quiet rate-note">
        Older books give the angle of contact at the fork and how many times longer the fork is than the radius of the
        roller: 10° at 3 to 1 are 30° at the balance (Playtner, 1910).
      </p>
      <div className="bench-fields">
        <BenchField
          label="Angle at the fork"
          name="forkAngleDeg"
          unit="°"
          figure={forkAngle}
          hint="lift, lock and run together"
          onType={(angle) => setFork({ ...fork, angle })}
        />
        <BenchField
          label="Fork to roller"
          name="leverRatio"
          unit="to 1"
          figure={ratio}
          hint="lengths, fork over roller"
          onType={(next) => setFork({ ...fork, ratio: next })}
        />
      </div>
      {ofFork !== null &&
        ('refused' in ofFork ? (
          <p className="problem">{ofFork.refused}</p>
        ) : (
          <p className="rate-says">
            {figure(forkAngle.value ?? 0)}° × {figure(ratio.value ?? 0)} = {figure(ofFork.found, 2)}° at the balance
          </p>
        ))}
    </section>
  )
}
