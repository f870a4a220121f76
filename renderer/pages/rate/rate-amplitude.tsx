import { type AmplitudeHelp, amplitudesAtOtherLiftAngles, liftTimes } from '../../../core/bench/amplitude-help.ts'
import { figure } from '../../../core/wording/figure.ts'
import { amplitudeSentence, wrongLiftSentence } from '../../../core/wording/rate-help.ts'
import { Working } from '../../components/working.tsx'

/** The amplitude by both formulas, side by side, with the working of each. */
export const AmplitudeAnswer = ({ help }: { help: AmplitudeHelp }) => (
  <>
    <div className="amplitudes">
      <div>
        <h3>Exact</h3>
        <p className="hero">{help.exact.toFixed(1)}°</p>
        <Working step={help.exactWorking} />
      </div>
      <div>
        <h3>Usual formula</h3>
        <p className="hero">{help.usual.toFixed(1)}°</p>
        <Working step={help.usualWorking} />
      </div>
    </div>
    <p className="rate-says">
      {help.knocks && <span aria-hidden="true">△ </span>}
      {amplitudeSentence(help)}
    </p>
  </>
)

const usualAmplitudeDeg = 270

interface LiftTablesProps {
  readonly liftAngleDeg: number
  readonly beatRateVph: number
  /** The amplitude found; a usual one stands for it while none is. */
  readonly amplitudeDeg: number | undefined
  readonly of: string | undefined
}

/** Lift times by amplitude, and what a wrong lift angle does to one swing. */
export const LiftTables = ({ liftAngleDeg, beatRateVph, amplitudeDeg, of }: LiftTablesProps) => {
  const swing = amplitudeDeg ?? usualAmplitudeDeg
  return (
    <div className="lift-tables">
      <section aria-labelledby="lift-times">
        <h2 id="lift-times">Lift times{of === undefined ? '' : ` of ${of}`}</h2>
        <table>
          <thead>
            <tr>
              <th scope="col">Amplitude</th>
              <th scope="col">Lift time</th>
            </tr>
          </thead>
          <tbody>
            {liftTimes(liftAngleDeg, beatRateVph).map((row) => (
              <tr key={row.amplitudeDeg}>
                <th scope="row">{row.amplitudeDeg}°</th>
                <td>{row.liftTimeMs.toFixed(2)} ms</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section aria-labelledby="wrong-lift">
        <h2 id="wrong-lift">A wrong lift angle</h2>
        <p className="rate-note">{wrongLiftSentence(swing, liftAngleDeg)}</p>
        <table>
          <thead>
            <tr>
              <th scope="col">Instrument set to</th>
              <th scope="col">shows</th>
              <th scope="col">off by</th>
            </tr>
          </thead>
          <tbody>
            {amplitudesAtOtherLiftAngles(swing, liftAngleDeg).map((row) => {
              const off = row.amplitudeDeg - swing
              return (
                <tr key={row.liftAngleDeg}>
                  <th scope="row">{figure(row.liftAngleDeg, 2)}°</th>
                  <td>{row.amplitudeDeg.toFixed(1)}°</td>
                  <td>
                    {row.liftAngleDeg === liftAngleDeg ? 'right' : `${off > 0 ? '+' : '−'}${Math.abs(off).toFixed(1)}°`}
                  </td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </section>
    </div>
  )
}
