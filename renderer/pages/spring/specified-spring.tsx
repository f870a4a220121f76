import type { ReactNode } from 'react'
import { Link } from 'wouter'
import type { Source } from '../../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { orderOfSpring } from '../../../core/orders/order-of-spring.ts'
import { springProofs } from '../../../core/proofs/spring-proofs.ts'
import { originOf } from '../../../core/record/inherit.ts'
import { springLine } from '../../../core/springs/spring-line.ts'
import type { ProofReport } from '../../../core/wording/proof-report.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { springCautions } from '../../../core/wording/spring-cautions.ts'
import { MissingValue } from '../../components/missing-value.tsx'
import { OrderButton } from '../../components/order-button.tsx'
import { OutcomeMark } from '../../components/outcome-mark.tsx'
import { shownAs, shownWord } from '../../components/shown-as.ts'
import { ValueCell } from '../../components/value-cell.tsx'
import { worstOf } from '../../components/worst-of.ts'
import { CopySpring } from './copy-spring.tsx'
import type { SpringSectionProps } from './section-props.ts'

const fields = [
  'springHeightMm',
  'springThicknessMm',
  'springLengthMm',
  'barrelInsideMm',
  'springEnd',
  'springMaterial',
  'springGauge',
] as const satisfies readonly CaliberFieldKey[]

const heroFields = [
  ['springHeightMm', 'heightMm'],
  ['springThicknessMm', 'thicknessMm'],
  ['springLengthMm', 'lengthMm'],
] as const

interface SpecifiedSpringProps extends SpringSectionProps {
  readonly reports: readonly ProofReport[]
  readonly sources: readonly Source[]
  /** What stands under the figures. */
  readonly children: ReactNode
}

/** The spring that the maker specified, large, with where each figure comes from and whether it can be right. */
export const SpecifiedSpring = ({ caliber, name, caliberId, reports, sources, children }: SpecifiedSpringProps) => {
  const { values } = caliber
  const sizes = {
    heightMm: values.springHeightMm,
    thicknessMm: values.springThicknessMm,
    lengthMm: values.springLengthMm,
  }
  const order = orderOfSpring(caliber, (key) => sources.find((source) => source.key === key)?.title ?? key)
  const [...parts] = springLine(sizes, 'height-thickness-length').split(' × ')
  return (
    <section className="specified-spring" aria-labelledby="specified">
      <h2 id="specified">Specified</h2>
      <p className="spring-hero">
        {heroFields.map(([field, size], index) => (
          <span key={field}>
            {index > 0 && ' × '}
            {sizes[size] === undefined ? <MissingValue id={caliberId} field={field} /> : parts[index]}
          </span>
        ))}{' '}
        <span className="unit">mm</span>
      </p>
      {children}
      <p className="order-caution">{springCautions.order}</p>
      <CopySpring values={values} name={name} />
      {order && (
        <p className="actions copy">
          <OrderButton line={order} />
        </p>
      )}
      <div className="specified-columns">
        <dl>
          {fields.map((field) => (
            <ValueCell
              key={field}
              id={caliberId}
              field={field}
              readings={caliber.readings[field] ?? []}
              inheritedFrom={originOf(caliber, field)?.values.designation}
              problem={null}
              outcome={worstOf(field, reports)}
              sources={sources}
            />
          ))}
        </dl>
        <div>
          <ul className="spring-proofs" aria-label="What the proofs say of it">
            {springProofs.flatMap((id) => {
              const report = reports.find(({ proof }) => proof === id)
              if (report === undefined) return []
              const shown = shownAs(report)
              const outcome = shown === 'accepted' ? 'agrees' : shown
              return [
                <li key={id} className={`outcome-${outcome}`}>
                  <OutcomeMark outcome={outcome} />
                  <span>
                    {proofTitle(id)}: <em>{shownWord(report)}</em>
                    {shown !== 'agrees' && <span className="proof-says"> {report.message}</span>}
                  </span>
                </li>,
              ]
            })}
          </ul>
          <p className="copy">
            <Link href={`/caliber/${caliberId}`}>All proofs with their working</Link>
          </p>
        </div>
      </div>
    </section>
  )
}
