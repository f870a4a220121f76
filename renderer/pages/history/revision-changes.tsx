import { Link } from 'wouter'
import type { RevisionChange } from '../../../core/api/contract.ts'
import { compareEntries } from '../../../core/record/compare-entries.ts'
import {
  type WordedDifference,
  wordDifference,
  wordGaugeDifferences,
  wordOrderDifferences,
  wordSourceDifferences,
  wordSpringDifferences,
} from '../../../core/wording/difference.ts'
import { useRevision } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'

const Side = ({ lines }: { lines: readonly string[] }) =>
  lines.length === 0 ? (
    <span className="quiet">–</span>
  ) : (
    lines.map((text, index) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: two readings may say the same, and none moves while it is read
      <div key={index}>{text}</div>
    ))
  )

const happened = (before: object | null, after: object | null): string =>
  before === null ? 'came in' : after === null ? 'was removed' : 'was changed'

interface Told {
  readonly key: string
  readonly name: string
  readonly differences: readonly WordedDifference[]
  /** Where it stands now; absent where it was removed. */
  readonly href?: string
}

const told = (change: RevisionChange): Told => {
  if ('sourceKey' in change) {
    const { sourceKey, before, after } = change
    const name = (after ?? before)?.title ?? sourceKey
    return { key: `source ${sourceKey}`, name, differences: wordSourceDifferences(before, after), href: '/sources' }
  }
  if ('springId' in change) {
    const { springId, before, after } = change
    const name = `Spring ${(after ?? before)?.supplierRef ?? ''}`
    return { key: `spring ${springId}`, name, differences: wordSpringDifferences(before, after), href: '/springs' }
  }
  if ('orderId' in change) {
    const { orderId, before, after } = change
    const name = (after ?? before)?.what ?? 'Order'
    return { key: `order ${orderId}`, name, differences: wordOrderDifferences(before, after), href: '/orders' }
  }
  if ('gaugeId' in change) {
    const { gaugeId, before, after } = change
    const name = `Gauge table ${(after ?? before)?.name ?? ''}`
    return { key: `gauge ${gaugeId}`, name, differences: wordGaugeDifferences(before, after), href: '/gauges' }
  }
  const { caliberId, before, after } = change
  const state = after ?? before
  return {
    key: `caliber ${caliberId}`,
    name: state === null ? '' : `${state.maker} ${state.designation}`,
    differences: compareEntries(before, after).map(wordDifference),
    ...(after === null ? {} : { href: `/caliber/${caliberId}` }),
  }
}

/** What one change did to one record: each field that differs, before and after. */
const Changed = ({ change }: { change: RevisionChange }) => {
  const { before, after } = change
  const { name, differences, href } = told(change)
  return (
    <section className="changed">
      <h3>
        {href === undefined ? name : <Link href={href}>{name}</Link>}{' '}
        <span className="quiet">{happened(before, after)}</span>
      </h3>
      {differences.length === 0 ? (
        <p className="quiet">Nothing differs but what belongs to it.</p>
      ) : (
        <table className="differences">
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Before</th>
              <th scope="col">After</th>
            </tr>
          </thead>
          <tbody>
            {differences.map(({ key, label, before: was, after: is }) => (
              <tr key={key}>
                <th scope="row">{label}</th>
                <td>
                  <Side lines={was} />
                </td>
                <td>
                  <Side lines={is} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}

interface RevisionChangesProps {
  readonly id: number
  readonly takeBack: (id: number) => void
  readonly busy: boolean
}

/** What a change did, and the key to take it back, or what stands in the way of that. */
export const RevisionChanges = ({ id, takeBack, busy }: RevisionChangesProps) => {
  const revision = useRevision(id)
  const first = revision.data?.pages[0]
  if (revision.error) return <p className="problem">{failureText(revision.error)}</p>
  if (first === undefined) return <p className="quiet">Reading…</p>
  const changes = revision.data?.pages.flatMap((page) => page.changes) ?? []
  return (
    <div className="revision-changes">
      {first.takenBack ? (
        <p className="quiet">This change has been taken back.</p>
      ) : first.later.length > 0 ? (
        <div>
          <p>
            It cannot be taken back by itself:{' '}
            {first.later.length === 1 ? 'a later change builds' : 'later changes build'} on it.
          </p>
          <ul>
            {first.later.slice(0, 20).map((later) => (
              <li key={later.id}>
                <Link href={`/history/${later.id}`}>{later.action}</Link>
              </li>
            ))}
          </ul>
        </div>
      ) : (
        <p className="actions">
          <button type="button" className="plain-button" disabled={busy} onClick={() => takeBack(id)}>
            Take this back
          </button>
        </p>
      )}
      {changes.map((change) => (
        <Changed key={told(change).key} change={change} />
      ))}
      {revision.hasNextPage && (
        <p className="actions">
          <button type="button" className="plain-button" onClick={() => void revision.fetchNextPage()}>
            Show more of the {first.total}
          </button>
        </p>
      )}
    </div>
  )
}
