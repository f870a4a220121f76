import { Link } from 'wouter'
import { springCautions } from '../../../core/wording/spring-cautions.ts'
import type { SpringSectionProps } from './section-props.ts'
import { TrayRanking } from './tray-ranking.tsx'

/** What the tray and the suppliers' lists hold for a caliber, ranked against the spring that its maker specified. */
export const Substitutes = ({ caliber, name, caliberId }: SpringSectionProps) => {
  const { values } = caliber
  const { springHeightMm, springThicknessMm } = values
  return (
    <section className="spring-substitutes" aria-labelledby="from-the-tray">
      <h2 id="from-the-tray">From the tray</h2>
      <p className="quiet">{springCautions.order}</p>
      {(springHeightMm === undefined || springThicknessMm === undefined) && (
        <p>
          {springHeightMm === undefined && springThicknessMm === undefined
            ? 'No spring is specified here'
            : `The ${springHeightMm === undefined ? 'height' : 'thickness'} of the spring is not specified here`}
          , so none can be advised; what is shown says only what would go into the barrel.{' '}
          <Link
            href={`/caliber/${caliberId}/edit/${springHeightMm === undefined ? 'springHeightMm' : 'springThicknessMm'}`}
          >
            Enter what the maker specified
          </Link>
          .
        </p>
      )}
      <TrayRanking values={values} name={name} against="Specified" />
    </section>
  )
}
