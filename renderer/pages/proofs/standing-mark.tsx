import type { Outcome } from '../../../core/proofs/proof.ts'
import type { Standing } from '../../../core/proofs/standing.ts'
import { OutcomeMark, OverruleMark } from '../../components/outcome-mark.tsx'

const outcomes: Readonly<Record<Exclude<Standing, 'accepted'>, Outcome>> = {
  wrong: 'disagrees',
  doubtful: 'doubtful',
  'cannot-check': 'cannot-check',
  agrees: 'agrees',
}

/** The class that gives a badge the colour of a standing. */
export const standingClass = (standing: Standing): string =>
  standing === 'accepted' ? 'badge' : `badge outcome-${outcomes[standing]}`

/** The shape of a standing; its word stands beside it. */
export const StandingMark = ({ standing }: { standing: Standing }) =>
  standing === 'accepted' ? <OverruleMark /> : <OutcomeMark outcome={outcomes[standing]} />
