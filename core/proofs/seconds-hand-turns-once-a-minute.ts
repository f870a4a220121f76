import { hasFourthArbor } from '../formulas/fourth-arbor.ts'
import { gearRatio } from '../formulas/gear-ratio.ts'
import { missingCounts, type Stage, stageCounts, stagesFromCentre, thirdToSweep } from '../formulas/train-stages.ts'
import { plain } from '../quantities/plain.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { defineProof } from './define-proof.ts'
import { asWritten, exactValue } from './exact-value.ts'
import { countsWhere, fractionsOf } from './train-working.ts'

/**
 * The pairs from the centre to the arbor that carries the hand: the fourth, the escape arbor where there is no fourth, or
 * the sweep pinion driven from the third.
 */
export const stagesToHand = (values: CaliberValues): readonly Stage[] => {
  const fourth = hasFourthArbor(values) !== false
  const stages = stagesFromCentre(values, fourth)
  if (values.secondsDisplay === 'centre-indirect') return [...stages.slice(0, 1), thirdToSweep]
  return fourth ? stages.slice(0, 2) : stages
}

const trainKeys = [
  'centreWheel',
  'thirdPinion',
  'thirdWheel',
  'fourthPinion',
  'fourthWheel',
  'fifthPinion',
  'fifthWheel',
  'escapePinion',
  'sweepDriver',
  'sweepPinion',
  'hoursPerCentreTurn',
] as const

/** The arbor that carries the seconds hand turns exactly 60 times an hour. */
export const secondsHandTurnsOnceAMinute = defineProof({
  id: 'seconds-hand-turns-once-a-minute',
  title: 'Seconds hand turns once a minute',
  meaning:
    'The arbor that carries the seconds hand turns sixty times an hour; where the counts give another figure, one of them is wrong or the hand is not a seconds hand.',
  needs: ['secondsDisplay'],
  uses: trainKeys,
  lists: [],
  tolerance: {
    allows: 'nothing: exactly 60 turns an hour',
    why: 'Whole counts give 60 exactly or show a wrong time within the hour.',
  },
  source: 'W. L. Goodrich, The Modern Clock, 1905, p. 265; W. Derham, The Artificial Clock-maker, 1696, p. 30',
  validity:
    'Movements with a seconds hand on the fourth arbor (small, or direct in the centre), on a sweep pinion driven from ' +
    'the third arbor (indirect), or on the escape arbor of a train without a fourth.',
  reasons: ['seconds-true', 'seconds-false'],
  appliesTo: (values) => values.secondsDisplay !== 'none',
  judge: (values, { readings }) => {
    const stages = stagesToHand(values)
    const counts = stageCounts(values, stages)
    if (counts === null) return { outcome: 'cannot-check', missing: missingCounts(values, stages) }
    const { wheels, pinions } = counts
    const { hoursPerCentreTurn: centre } = values
    const hours = centre === undefined ? undefined : exactValue(readings, 'hoursPerCentreTurn', centre)
    const ratio = gearRatio(wheels, pinions)
    const exact = hours === undefined ? ratio : ratio.div(hours)
    const found = exact.valueOf()
    const agrees = exact.n === 60n && exact.d === 1n
    return {
      outcome: agrees ? 'agrees' : 'disagrees',
      stated: 60,
      found,
      unit: 'turns an hour',
      difference: plain(found - 60),
      allowed: 0,
      working: [
        {
          formula: `${fractionsOf(wheels, pinions)}${hours === undefined ? '' : ` ÷ ${hours.toFraction(true)}`}`,
          where: {
            ...countsWhere(values, stages),
            ...(centre === undefined ? {} : { hoursPerCentreTurn: centre }),
          },
          gives: asWritten(exact),
        },
      ],
      reason: agrees ? 'seconds-true' : 'seconds-false',
      details: { arbor: stages.at(-1)?.driven ?? 'fourth', found: asWritten(exact) },
    }
  },
})
