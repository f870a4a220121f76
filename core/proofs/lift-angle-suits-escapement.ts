import { plain } from '../quantities/plain.ts'
import { defineProof } from './define-proof.ts'

/** From the least to the most, in degrees. */
type Range = readonly [least: number, most: number]

const customary: Range = [38, 54]
/** The least and the most angle of contact at the balance that books up to this year print for a lever. */
const printed: Range = [24, 50]
const lastPrintYear = 1910
const mostBorne = 60

const within = (angle: number, [least, most]: Range): boolean => angle >= least && angle <= most

const outcomes = {
  'lift-usual': 'agrees',
  'lift-as-of-old': 'agrees',
  'lift-small': 'doubtful',
  'lift-large': 'doubtful',
  'lift-beyond': 'disagrees',
} as const

const reasonOf = (angle: number, firstYear: number | undefined): keyof typeof outcomes => {
  if (within(angle, customary)) return 'lift-usual'
  if (within(angle, printed)) return (firstYear ?? Infinity) <= lastPrintYear ? 'lift-as-of-old' : 'lift-small'
  return within(angle, [customary[1], mostBorne]) ? 'lift-large' : 'lift-beyond'
}

/** The lift angle lies where those of the escapement usually do. */
export const liftAngleSuitsEscapement = defineProof({
  id: 'lift-angle-suits-escapement',
  title: 'Lift angle suits the escapement',
  meaning:
    'The lift angle lies where those of its escapement usually do; an amplitude read with a wrong lift angle is wrong in the same proportion.',
  needs: ['escapement', 'liftAngleDeg'],
  uses: ['firstYear'],
  lists: [],
  tolerance: {
    allows:
      'for a lever 38 to 54°, and down to 24° where it was first made by 1910; otherwise from 24° and up to 60° is doubtful',
    why:
      'Lever watches that are measured on a timing instrument have 38 to 54°. Books up to 1910 draw levers with 24 to 50°, ' +
      'counted at the balance from unlocking to drop as it is now. Beyond 60° and below 24° nothing is known; the 60° is ' +
      'our choice.',
  },
  source:
    'common practice (38 to 54°, from memory); Watch and Clock Escapements, compiled from The Keystone, 1904, pp. 55 and 73; ' +
    'H. R. Playtner, An Analysis of the Lever Escapement, 1910, p. 28',
  validity:
    'Lever escapements with stones. No usual lift angle of a pin lever, cylinder, duplex, detent or verge was to be had in ' +
    'print, so nothing is said of theirs.',
  reasons: ['lift-usual', 'lift-as-of-old', 'lift-small', 'lift-large', 'lift-beyond'],
  judge: ({ escapement, liftAngleDeg, firstYear }) => {
    if (escapement !== 'lever') {
      return { outcome: 'cannot-check', missing: [], reason: 'no-usual-lift', details: { escapement, liftAngleDeg } }
    }
    const reason = reasonOf(liftAngleDeg, firstYear)
    const outcome = outcomes[reason]
    const [least, most] = reason === 'lift-as-of-old' ? printed : customary
    const small = liftAngleDeg - least < most - liftAngleDeg
    const margin = plain(small ? liftAngleDeg - least : most - liftAngleDeg)
    return {
      outcome,
      stated: liftAngleDeg,
      found: null,
      unit: 'deg',
      difference: outcome === 'agrees' ? 0 : small ? margin : -margin,
      allowed: 0,
      working: [
        {
          formula: small ? `${plain(liftAngleDeg)} − ${least}` : `${most} − ${plain(liftAngleDeg)}`,
          where: { liftAngleDeg, least, most },
          gives: margin,
        },
      ],
      reason,
      details: { least, most, lastPrintYear },
    }
  },
})
