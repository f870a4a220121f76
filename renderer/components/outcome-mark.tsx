import type { Outcome } from '../../core/proofs/proof.ts'
import { outcomeWords as words } from '../../core/wording/outcome.ts'

/** What an outcome is called, alone and after a number. */
export const outcomeWords: Readonly<Record<Outcome, string>> = {
  agrees: words.agrees.word,
  disagrees: words.disagrees.word,
  doubtful: words.doubtful.word,
  'cannot-check': words['cannot-check'].word,
  'outside-range': words['outside-range'].word,
}

const shapes: Readonly<Record<Outcome, string>> = {
  agrees: 'M3 8.5 6.5 12 13 4.5',
  disagrees: 'M4 4 12 12M12 4 4 12',
  doubtful: 'M8 3 14 13 2 13Z',
  'cannot-check': 'M8 3a5 5 0 1 0 .01 0Z',
  'outside-range': 'M3 3v10M13 3v10M5.5 8h5',
}

/** A shape for an outcome; the word stands beside it, or is given as `label`. */
export const OutcomeMark = ({ outcome }: { outcome: Outcome }) => (
  <svg className={`outcome-mark outcome-${outcome}`} viewBox="0 0 16 16" aria-hidden="true">
    <path d={shapes[outcome]} />
  </svg>
)

/** A pen stroke: what the owner wrote under a finding; the word stands beside it. */
export const OverruleMark = () => (
  <svg className="outcome-mark" viewBox="0 0 16 16" aria-hidden="true">
    <path d="M3 13 3.8 9.7 10.6 2.9 13.1 5.4 6.3 12.2Z" />
  </svg>
)

/** How the proofs of a caliber stand, in a list: shape and word. */
export const ProofBadge = ({ disagree, doubtful }: { disagree: number; doubtful: number }) => {
  const outcome: Outcome = disagree > 0 ? 'disagrees' : doubtful > 0 ? 'doubtful' : 'agrees'
  const word =
    disagree > 0
      ? `${disagree} disagree${disagree === 1 ? 's' : ''}`
      : doubtful > 0
        ? `${doubtful} doubtful`
        : 'no doubts'
  const title = `${disagree} ${disagree === 1 ? 'proof disagrees' : 'proofs disagree'}, ${doubtful} ${doubtful === 1 ? 'is' : 'are'} doubtful`
  return (
    <span className={`badge outcome-${outcome}`} title={title}>
      <OutcomeMark outcome={outcome} />
      {word}
    </span>
  )
}
