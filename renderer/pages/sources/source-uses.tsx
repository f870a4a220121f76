import { Link } from 'wouter'
import { labelOf } from '../../../core/record/label-of.ts'
import { useSourceUses } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'

/** More values of one caliber than this are named when asked for. */
const shownAtOnce = 6

/** The calibers of which values rest on a source, each with its fields. */
export const SourceUses = ({ sourceKey }: { sourceKey: string }) => {
  const { data, error } = useSourceUses(sourceKey)
  if (error) return <p className="problem">{failureText(error)}</p>
  if (!data) return null
  return (
    <div className="source-uses">
      <ul aria-label="What rests on it">
        {data.uses.map(({ caliberId, maker, designation, keys }) => (
          <li key={caliberId}>
            <Link href={`/caliber/${caliberId}`}>
              {maker} {designation}
            </Link>{' '}
            {keys.length > shownAtOnce ? (
              <details className="quiet">
                <summary>{keys.length} values</summary>
                {keys.map(labelOf).join(', ')}
              </details>
            ) : (
              <span className="quiet">{keys.map(labelOf).join(', ')}</span>
            )}
          </li>
        ))}
        {data.gauges?.map((name) => (
          <li key={name}>
            <Link href="/gauges">{name}</Link> <span className="quiet">gauge table</span>
          </li>
        ))}
      </ul>
      {data.total > data.uses.length && <p className="quiet">and {data.total - data.uses.length} calibers more</p>}
    </div>
  )
}
