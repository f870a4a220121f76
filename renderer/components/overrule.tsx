import { type RefObject, useRef, useState } from 'react'
import { type Overrule, overruleSeverities, severityOf, type Weight } from '../../core/proofs/severity.ts'
import type { ProofReport } from '../../core/wording/proof-report.ts'
import { proofTitle } from '../../core/wording/proof-title.ts'
import { overruleSentence } from '../../core/wording/severity.ts'
import { OverruleMark } from './outcome-mark.tsx'
import { OverruleForm } from './overrule-form.tsx'
import './overrule.css'

/** Keeps the owner's word on a finding, or lets it go; answers why that was not done, or null. */
export type KeepOverrule = (proof: string, overrule: Omit<Overrule, 'proof'> | null) => Promise<string | null>

/** What the owner made of a finding, with the mark of it. */
export const OverruleLine = ({ overruled }: { overruled: NonNullable<Weight['overruled']> }) => (
  <p className={overruled.applies ? 'overrule' : 'overrule lapsed'}>
    <OverruleMark />
    <span>{overruleSentence(overruled)}</span>
  </p>
)

interface FindingOverruleProps {
  readonly report: ProofReport
  readonly keep: KeepOverrule
  /** Where the focus goes when nothing is left to press. */
  readonly line: RefObject<HTMLElement | null>
}

/** What can be done about a finding that its owner knows better: overruled with a reason, or given back its weight. */
export const FindingOverrule = ({ report, keep, line }: FindingOverruleProps) => {
  const { proof, outcome, overruled } = report
  const [open, setOpen] = useState(false)
  const [problem, setProblem] = useState('')
  const button = useRef<HTMLButtonElement>(null)
  const own = severityOf(outcome)
  const canOverrule = own !== 'none' && !overruled?.applies
  if (!canOverrule && overruled === null) return null

  const close = () => {
    setOpen(false)
    button.current?.focus()
  }
  const takeBack = async () => {
    setProblem((await keep(proof, null)) ?? '')
    const stays = button.current ?? line.current
    stays?.focus()
  }
  const about = <span className="out-of-sight"> of “{proofTitle(proof)}”</span>
  return (
    <div className="overrule-actions">
      <button
        ref={button}
        type="button"
        className="text-button"
        aria-expanded={canOverrule ? open : undefined}
        onClick={() => (canOverrule ? setOpen(!open) : void takeBack())}
      >
        {canOverrule ? (
          <>
            Overrule…<span className="out-of-sight"> “{proofTitle(proof)}”</span>
          </>
        ) : (
          <>Take the overrule back{about}</>
        )}
      </button>
      {canOverrule && overruled !== null && (
        <button type="button" className="text-button" onClick={() => void takeBack()}>
          Take the overrule back{about}
        </button>
      )}
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      {canOverrule && open && (
        <OverruleForm
          title={proofTitle(proof)}
          severities={overruleSeverities.filter((severity) => severity !== own)}
          reason={overruled?.reason ?? ''}
          save={async (severity, reason) => {
            const refused = await keep(proof, { severity, reason, of: outcome })
            if (refused === null) close()
            return refused
          }}
          leave={close}
        />
      )}
    </div>
  )
}

/** Overrules of findings that are not made here: the proof says nothing of this caliber, or only a newer version knows it. */
export const OtherOverrules = ({ overrules, keep }: { overrules: readonly Overrule[]; keep: KeepOverrule }) => {
  const heading = useRef<HTMLHeadingElement>(null)
  const [problem, setProblem] = useState('')
  if (overrules.length === 0) return null
  return (
    <section className="other-overrules">
      <h3 ref={heading} tabIndex={-1}>
        Overruled, but not found here now
      </h3>
      <ul>
        {overrules.map(({ proof, severity, reason }) => (
          <li key={proof}>
            <span>{proofTitle(proof)}</span>
            <OverruleLine overruled={{ severity, reason, applies: true }} />
            <button
              type="button"
              className="text-button overrule-actions"
              onClick={async () => {
                setProblem((await keep(proof, null)) ?? '')
                heading.current?.focus()
              }}
            >
              Take the overrule back<span className="out-of-sight"> of “{proofTitle(proof)}”</span>
            </button>
          </li>
        ))}
      </ul>
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </section>
  )
}
