import type { WorkingStep } from '../../core/proofs/proof.ts'
import { cancelledLine } from '../../core/wording/cancelled-line.ts'
import { spokenWorking } from '../../core/wording/spoken-working.ts'
import { workingLine } from '../../core/wording/working-line.ts'
import { workingTerms } from '../../core/wording/working-terms.ts'

/** A line of working with its fractions set one number over the other; copied and read aloud it is one line. */
const Line = ({ line, className }: { line: string; className: string }) => (
  <span className={className} role="math" aria-label={spokenWorking(line)}>
    {workingTerms(line).map((term, at) =>
      term.above === undefined ? (
        // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a line have no other name
        <span key={at}>{term.text}</span>
      ) : (
        // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a line have no other name
        <span className="fraction" key={at}>
          <span>{term.above}</span>
          <span className="out-of-sight">/</span>
          <span>{term.below}</span>
        </span>
      ),
    )}
  </span>
)

interface StepProps {
  readonly step: Pick<WorkingStep, 'formula' | 'gives' | 'unit'>
}

/** The sum and what it gives. */
export const WorkingSum = ({ step }: StepProps) => <Line className="working" line={workingLine(step)} />

/** The same sum cancelled, where anything cancels. */
export const WorkingCancelled = ({ step }: StepProps) => {
  const cancelled = cancelledLine(step)
  return cancelled === null ? null : <Line className="working cancelled" line={cancelled} />
}

/** One step of working as on paper: the sum and what it gives, and below it the same sum cancelled. */
export const Working = ({ step }: StepProps) => (
  <>
    <WorkingSum step={step} />
    <WorkingCancelled step={step} />
  </>
)
