import { useState } from 'react'
import { balanceHelp, changesAgainst, publishedBalance } from '../../../core/bench/balance-help.ts'
import { balanceSentence, changeSentence } from '../../../core/wording/rate-help.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { answerOf, typedFigure, typedGain } from '../../components/typed-figure.ts'
import { Working } from '../../components/working.tsx'

const published = publishedBalance()
const inertiaUnits = ['mg·cm²', 'mg cm²', 'mgcm2', 'mg cm2']
const stiffnessUnits = ['µn·m', 'µn m', 'µnm', 'µn·m/rad', 'µnm/rad']

/** Balance and hairspring: the third of rate, inertia and stiffness from the other two, and what takes a gain out. */
export const BalancePart = ({ beatRateVph }: { beatRateVph: number }) => {
  const [typed, setTyped] = useState({ inertia: '', stiffness: '', gain: '' })
  const inertia = typedFigure('Moment of inertia', typed.inertia, inertiaUnits)
  const stiffness = typedFigure('Stiffness', typed.stiffness, stiffnessUnits)
  const gain = typedGain('Gain', typed.gain)
  const help = answerOf(() =>
    balanceHelp({
      beatRateVph,
      ...(inertia.value === undefined ? {} : { inertiaMgCm2: inertia.value }),
      ...(stiffness.value === undefined ? {} : { stiffnessMicroNm: stiffness.value }),
    }),
  )
  return (
    <section aria-labelledby="balance">
      <h2 id="balance">Balance and hairspring</h2>
      <p className="quiet rate-note">
        The time of an oscillation is 2π √(inertia ÷ stiffness). Fill in one, and the other follows for the rate above;
        fill in both, and the rate follows.
      </p>
      <div className="bench-fields">
        <BenchField
          label="Moment of inertia of the balance"
          name="inertia"
          unit="mg·cm²"
          figure={inertia}
          hint="some 5 to 20 in wrist watches, from memory"
          onType={(text) => setTyped({ ...typed, inertia: text })}
        />
        <BenchField
          label="Stiffness of the hairspring"
          name="stiffness"
          unit="µN·m a radian"
          figure={stiffness}
          hint="torque for one radian, 57.3°"
          onType={(text) => setTyped({ ...typed, stiffness: text })}
        />
        <BenchField
          label="Gain to be taken out"
          name="gain"
          unit="s a day"
          figure={gain}
          hint="a loss with a minus; minutes as 3 min"
          onType={(text) => setTyped({ ...typed, gain: text })}
        />
      </div>
      {'refused' in help ? (
        <p className="problem">{help.refused}</p>
      ) : (
        help.found !== null && (
          <div className="rate-says">
            <p>{balanceSentence(help.found)}</p>
            <Working step={help.found.working} />
          </div>
        )
      )}
      {gain.value !== undefined && gain.value !== 0 && (
        <div className="rate-says">
          <p>Any one of these takes it out:</p>
          <ul>
            {changesAgainst(gain.value).map((change) => (
              <li key={change.part}>{changeSentence(change)}</li>
            ))}
          </ul>
        </div>
      )}
      <details className="rate-example">
        <summary>A published example</summary>
        <p>
          A thin ring of 9.5 mm radius swings 3.10 times a second on a spring that a torque of 11 µN·m holds at 45°. How
          heavy is it? The book prints {published.printedMassG} g (a college physics text, at second hand).
        </p>
        {published.working.map((step) => (
          <Working key={step.formula} step={step} />
        ))}
      </details>
    </section>
  )
}
