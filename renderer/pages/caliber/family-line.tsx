import { Link } from 'wouter'
import type { Caliber } from '../../../core/record/caliber.ts'
import { useBases } from '../../api/use-bases.ts'
import { useVariants } from '../../api/use-variants.ts'
import { fieldPlace } from '../../components/use-sought-field.ts'

/** On what a caliber is based and which ones follow it, each a link to those in the library. */
export const FamilyLine = ({ id, caliber }: { id: number; caliber: Caliber }) => {
  const { basedOn } = caliber.values
  const [baseId] = useBases(id, caliber).ids
  const variants = useVariants(id)
  if (basedOn === undefined && variants.length === 0) return null
  return (
    <p id={fieldPlace('basedOn')} tabIndex={-1} className="quiet other-names family">
      {basedOn !== undefined && (
        <>Based on {baseId === undefined ? basedOn : <Link href={`/caliber/${baseId}`}>{basedOn}</Link>}. </>
      )}
      {variants.length > 0 && (
        <>
          {variants.length === 1 ? '1 variant follows it: ' : `${variants.length} variants follow it: `}
          {variants.map(({ id: variant, entry }, at) => (
            <span key={variant}>
              {at > 0 && ', '}
              <Link href={`/caliber/${variant}`}>{entry.designation}</Link>
            </span>
          ))}
          .
        </>
      )}
    </p>
  )
}
