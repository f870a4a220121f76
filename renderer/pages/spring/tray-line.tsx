import { orderOfStockSpring } from '../../../core/orders/order-of-stock-spring.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import type { RankedSpring } from '../../../core/springs/rank-springs.ts'
import { springLine } from '../../../core/springs/spring-line.ts'
import type { SpringVerdict } from '../../../core/springs/spring-reasons.ts'
import { figure } from '../../../core/wording/figure.ts'
import { springReason, springVerdictWords } from '../../../core/wording/spring-reason.ts'
import { torqueText } from '../../../core/wording/torque-text.ts'
import { OrderButton } from '../../components/order-button.tsx'
import { SpringsBeside } from '../../drawings/springs-beside.tsx'

/** Shape and word of a verdict. */
export const VerdictMark = ({ verdict }: { verdict: SpringVerdict }) => (
  <span className={`badge verdict-${verdict}`}>
    <span aria-hidden="true">{springVerdictWords[verdict].mark}</span>
    {springVerdictWords[verdict].word}
  </span>
)

const Fact = ({ label, value }: { label: string; value: string }) => (
  <span className="tray-fact">
    <span className="quiet">{label}</span> {value}
  </span>
)

interface TrayLineProps {
  readonly found: RankedSpring
  readonly values: CaliberValues
  /** How the spring that is ranked against is called in the drawing. */
  readonly against: string
  readonly open: boolean
  readonly onOpen: () => void
  readonly onBookOut: () => void
}

/** A spring of the tray for a caliber: its verdict and figures; opened, the reasons and a drawing. */
export const TrayLine = ({ found, values, against, open, onOpen, onBookOut }: TrayLineProps) => {
  const { spring, verdict, turns, goingHours, fill, torqueFullWind, torqueRate, reasons } = found
  const some = (value: number | null, decimals: number, unit = '') =>
    value === null ? '–' : `${figure(value, decimals)}${unit}`
  const line = springLine(spring, 'height-thickness-length-barrel')
  return (
    <>
      <button type="button" className="tray-line" aria-expanded={open} onClick={onOpen}>
        <VerdictMark verdict={verdict} />
        <span className="tray-sizes">{line}</span>
        <span className="tray-place">
          {spring.supplierRef}
          {spring.tray !== undefined && <span className="quiet"> {spring.tray}</span>}
        </span>
        <span className="tray-facts">
          <Fact label="stock" value={spring.inStock === undefined ? '–' : String(spring.inStock)} />
          {spring.price !== undefined && <Fact label="price" value={spring.price} />}
          <Fact label="turns" value={some(turns, 1)} />
          <Fact label="going" value={some(goingHours, 0, ' h')} />
          <Fact label="fill" value={fill === null ? '–' : `${figure(fill * 100, 0)} %`} />
          <Fact label="torque" value={torqueText(torqueFullWind, torqueRate)} />
        </span>
      </button>
      {verdict === 'not-advised' && !open && reasons[0] && <p className="tray-why">{springReason(reasons[0])}</p>}
      {open && (
        <div className="tray-open">
          <div>
            {reasons.length === 0 ? (
              <p>It is the size that was specified, and it suits the barrel.</p>
            ) : (
              <ul>
                {reasons.map((reason) => (
                  <li key={reason.code}>{springReason(reason)}</li>
                ))}
              </ul>
            )}
            <p className="quiet">
              Turns are theoretical ones; torque is a ratio, between that at full wind and that gained in each turn.
            </p>
            <p className="actions">
              {(spring.inStock ?? 0) > 0 && (
                <button type="button" className="plain-button" onClick={onBookOut}>
                  Book one out <kbd>B</kbd>
                </button>
              )}
              <OrderButton
                line={orderOfStockSpring(spring, values, verdict === 'as-specified' ? 'specified' : 'substitute')}
              />
            </p>
          </div>
          <SpringsBeside
            values={values}
            strips={[
              {
                name: against,
                heightMm: values.springHeightMm,
                thicknessMm: values.springThicknessMm,
                lengthMm: values.springLengthMm,
              },
              {
                name: `${spring.supplierRef}: ${line}`,
                heightMm: spring.heightMm,
                thicknessMm: spring.thicknessMm,
                lengthMm: spring.lengthMm,
              },
            ]}
          />
        </div>
      )}
    </>
  )
}
