import { Link } from 'wouter'
import { proofs } from '../../core/proofs/index.ts'
import type { Outcome, WorkingStep } from '../../core/proofs/proof.ts'
import type { ProofReport } from '../../core/wording/proof-report.ts'
import { OutcomeMark, outcomeWords } from '../components/outcome-mark.tsx'

/** What needs a look comes first. */
const order: readonly Outcome[] = ['disagrees', 'doubtful', 'outside-range', 'agrees', 'cannot-check']

const titleOf = (id: string): string => proofs.find((proof) => proof.id === id)?.title ?? id

const gives = ({ gives: result }: WorkingStep): string =>
  typeof result === 'number' ? String(Number(result.toPrecision(8))) : result

const Report = ({ report }: { report: ProofReport }) => (
  <li className={`proof outcome-${report.outcome}`}>
    <OutcomeMark outcome={report.outcome} />
    <div>
      <h3>
        {titleOf(report.proof)} <span className="outcome-word">{outcomeWords[report.outcome]}</span>
      </h3>
      <p className="message">{report.message}</p>
      {report.working.length > 0 && (
        <details className="working">
          <summary>Working</summary>
          {report.working.map((step) => (
            <p key={step.formula}>
              {step.formula} = {gives(step)}
            </p>
          ))}
          <p className="quiet">{report.source}</p>
        </details>
      )}
    </div>
  </li>
)

/** The proofs of a caliber: how many of each outcome, then each with its sentence and working. */
export const ProofColumn = ({ id, reports }: { id: number; reports: readonly ProofReport[] }) => {
  const sorted = [...reports].sort((one, other) => order.indexOf(one.outcome) - order.indexOf(other.outcome))
  const said = sorted.filter(({ outcome }) => outcome !== 'cannot-check')
  const unsaid = sorted.filter(({ outcome }) => outcome === 'cannot-check')
  const counts = order
    .map((outcome) => ({ outcome, count: reports.filter((report) => report.outcome === outcome).length }))
    .filter(({ count }) => count > 0)
  return (
    <section className="proofs" aria-labelledby="proofs">
      <h2 id="proofs">Proofs</h2>
      <p className="counts">
        {counts.map(({ outcome, count }) => (
          <span key={outcome} className={`badge outcome-${outcome}`}>
            <OutcomeMark outcome={outcome} />
            {count} {count === 1 ? outcomeWords[outcome] : outcomeWords[outcome].replace(/agrees$/, 'agree')}
          </span>
        ))}
      </p>
      <ul>
        {said.map((report) => (
          <Report key={report.proof} report={report} />
        ))}
      </ul>
      {unsaid.length > 0 && (
        <details className="unsaid">
          <summary>{unsaid.length} cannot be checked yet</summary>
          <ul>
            {unsaid.map((report) => (
              <Report key={report.proof} report={report} />
            ))}
          </ul>
          <Link href={`/caliber/${id}/edit`}>Enter what is missing</Link>
        </details>
      )}
    </section>
  )
}
