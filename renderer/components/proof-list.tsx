import { memo, type ReactNode } from 'react'
import { proofs } from '../../core/proofs/index.ts'
import type { Outcome } from '../../core/proofs/proof.ts'
import type { ProofReport } from '../../core/wording/proof-report.ts'
import { OutcomeMark, outcomeWords } from './outcome-mark.tsx'
import { Working } from './working.tsx'

/** What needs a look comes first. */
const order: readonly Outcome[] = ['disagrees', 'doubtful', 'outside-range', 'agrees', 'cannot-check']

/** The statement of a proof as a heading. */
export const proofTitle = (id: string): string => proofs.find((proof) => proof.id === id)?.title ?? id

const countsOf = (reports: readonly ProofReport[]) =>
  order
    .map((outcome) => ({ outcome, count: reports.filter((report) => report.outcome === outcome).length }))
    .filter(({ count }) => count > 0)
    .map(({ outcome, count }) => ({
      outcome,
      says: `${count} ${count === 1 ? outcomeWords[outcome] : outcomeWords[outcome].replace(/agrees$/, 'agree')}`,
    }))

/** How many proofs stand how, in words. */
export const proofSummary = (reports: readonly ProofReport[]): string =>
  countsOf(reports)
    .map(({ says }) => says)
    .join(' · ')

interface ProofListProps {
  readonly reports: readonly ProofReport[]
  /** How a field is gone to from a proof that doubts it or waits for it. */
  readonly linkTo: (key: string) => ReactNode
}

const Report = ({ report, linkTo }: { report: ProofReport; linkTo: ProofListProps['linkTo'] }) => {
  const { proof, outcome, message, hints, working, missing, fields, source } = report
  const waits = outcome === 'cannot-check'
  const keys = waits ? missing : outcome === 'agrees' ? [] : fields
  return (
    <li className={`proof outcome-${outcome}`} data-proof={proof} data-outcome={outcome}>
      <OutcomeMark outcome={outcome} />
      <div>
        <h3>
          {proofTitle(proof)} <span className="outcome-word">{outcomeWords[outcome]}</span>
        </h3>
        {waits && missing.length > 0 ? null : <p className="message">{message}</p>}
        {working.map((step) => (
          <Working key={step.formula} step={step} />
        ))}
        {hints.map((hint) => (
          <p className="proof-hint" key={hint}>
            A misprint? {hint}
          </p>
        ))}
        {keys.length > 0 && (
          <p className="proof-fields">
            {waits ? 'Needs ' : null}
            {keys.map((key) => (
              <span key={key}>{linkTo(key)}</span>
            ))}
          </p>
        )}
        {waits ? null : <p className="rule-source">Rule: {source}</p>}
      </div>
    </li>
  )
}

/** The proofs of a caliber: how many of each outcome, then each with its working and its sentence. */
export const ProofList = memo(function ProofList({ reports, linkTo }: ProofListProps) {
  const sorted = [...reports].sort((one, other) => order.indexOf(one.outcome) - order.indexOf(other.outcome))
  return (
    <section className="proofs" aria-labelledby="proofs">
      <h2 id="proofs">Proofs</h2>
      <p className="counts">
        {countsOf(reports).map(({ outcome, says }) => (
          <span key={outcome} className={`badge outcome-${outcome}`}>
            <OutcomeMark outcome={outcome} />
            {says}
          </span>
        ))}
      </p>
      <ul>
        {sorted.map((report) => (
          <Report key={report.proof} report={report} linkTo={linkTo} />
        ))}
      </ul>
    </section>
  )
})
