import { memo, type ReactNode, useRef, useState } from 'react'
import type { Overrule } from '../../core/proofs/severity.ts'
import type { ProofReport } from '../../core/wording/proof-report.ts'
import { proofTitle } from '../../core/wording/proof-title.ts'
import { OutcomeMark, OverruleMark, outcomeWords } from './outcome-mark.tsx'
import { FindingOverrule, type KeepOverrule, OtherOverrules, OverruleLine } from './overrule.tsx'
import { type Shown, shownAs, shownWord } from './shown-as.ts'
import { Working, WorkingCancelled, WorkingSum } from './working.tsx'

/** What needs a look comes first. */
const order: readonly Shown[] = ['disagrees', 'doubtful', 'outside-range', 'accepted', 'agrees', 'cannot-check']

const wordOf = (shown: Shown, count: number): string => {
  const word = shown === 'accepted' ? shown : outcomeWords[shown]
  return count === 1 ? word : word.replace(/agrees$/, 'agree')
}

const countsOf = (reports: readonly ProofReport[]) =>
  order
    .map((shown) => ({ shown, count: reports.filter((report) => shownAs(report) === shown).length }))
    .filter(({ count }) => count > 0)
    .map(({ shown, count }) => ({ shown, says: `${count} ${wordOf(shown, count)}` }))

/** How many proofs stand how, in words. */
export const proofSummary = (reports: readonly ProofReport[]): string =>
  countsOf(reports)
    .map(({ says }) => says)
    .join(' · ')

interface ProofListProps {
  readonly reports: readonly ProofReport[]
  /** How a field is gone to from a proof that doubts it or waits for it. */
  readonly linkTo: (key: string) => ReactNode
  /** What the caliber's owner overruled, findings that are not made here included. */
  readonly overrules: readonly Overrule[]
  readonly keepOverrule: KeepOverrule
}

type ReportProps = Pick<ProofListProps, 'linkTo' | 'keepOverrule'> & { readonly report: ProofReport }

/** Of what agrees, the sum alone; the rest of the working and the rule are a press away, and always printed. */
const AgreedWorking = ({ report: { proof, working, source } }: { report: ProofReport }) => {
  const [open, setOpen] = useState(false)
  const [first, ...more] = working
  return (
    <>
      <div className="agreed-sum">
        {first !== undefined && <WorkingSum step={first} />}
        <button
          type="button"
          className="rest-button"
          aria-expanded={open}
          aria-controls={`rest-${proof}`}
          onClick={() => setOpen(!open)}
        >
          {first === undefined ? 'Rule' : 'Working and rule'}
          <span className="out-of-sight"> of “{proofTitle(proof)}”</span>
        </button>
      </div>
      <div id={`rest-${proof}`} className="working-rest" data-open={open}>
        {first !== undefined && <WorkingCancelled step={first} />}
        {more.map((step) => (
          <Working key={step.formula} step={step} />
        ))}
        <p className="rule-source">Rule: {source}</p>
      </div>
    </>
  )
}

const Report = ({ report, linkTo, keepOverrule }: ReportProps) => {
  const { proof, outcome, overruled, message, hints, working, missing, fields, source } = report
  const line = useRef<HTMLLIElement>(null)
  const waits = outcome === 'cannot-check'
  const keys = waits ? missing : outcome === 'agrees' ? [] : fields
  return (
    <li
      ref={line}
      tabIndex={-1}
      className={`proof outcome-${shownAs(report)}`}
      data-proof={proof}
      data-outcome={outcome}
    >
      <OutcomeMark outcome={outcome} />
      <div>
        <h3>
          {proofTitle(proof)} <span className="outcome-word">{outcomeWords[outcome]}</span>
          {overruled?.applies && (
            <span className="overrule-word">
              <OverruleMark /> {shownWord(report)}
            </span>
          )}
        </h3>
        {waits && missing.length > 0 ? null : <p className="message">{message}</p>}
        {hints.map((hint) => (
          <p className="proof-hint" key={hint}>
            A misprint? {hint}
          </p>
        ))}
        {overruled !== null && <OverruleLine overruled={overruled} />}
        {outcome === 'agrees' ? (
          <AgreedWorking report={report} />
        ) : (
          working.map((step) => <Working key={step.formula} step={step} />)
        )}
        {keys.length > 0 && (
          <p className="proof-fields">
            {waits ? 'Needs ' : null}
            {keys.map((key) => (
              <span key={key}>{linkTo(key)}</span>
            ))}
          </p>
        )}
        {waits || outcome === 'agrees' ? null : <p className="rule-source">Rule: {source}</p>}
        <FindingOverrule report={report} keep={keepOverrule} line={line} />
      </div>
    </li>
  )
}

/** The proofs of a caliber: how many of each outcome, then each with its working and its sentence. */
export const ProofList = memo(function ProofList({ reports, linkTo, overrules, keepOverrule }: ProofListProps) {
  const sorted = [...reports].sort((one, other) => order.indexOf(shownAs(one)) - order.indexOf(shownAs(other)))
  const others = overrules.filter(({ proof }) => !reports.some((report) => report.proof === proof))
  return (
    <section className="proofs" aria-labelledby="proofs">
      <h2 id="proofs">Proofs</h2>
      <p className="counts">
        {countsOf(reports).map(({ shown, says }) => (
          <span key={shown} className={`badge outcome-${shown}`}>
            {shown === 'accepted' ? <OverruleMark /> : <OutcomeMark outcome={shown} />}
            {says}
          </span>
        ))}
      </p>
      <ul>
        {sorted.map((report) => (
          <Report key={report.proof} report={report} linkTo={linkTo} keepOverrule={keepOverrule} />
        ))}
      </ul>
      <OtherOverrules overrules={others} keep={keepOverrule} />
    </section>
  )
})
