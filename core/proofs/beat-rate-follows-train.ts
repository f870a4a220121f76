import { dailyDifference } from '../formulas/daily-difference.ts'
import { nominalRateShare } from '../formulas/fourth-arbor.ts'
import { missingCounts, stageCounts } from '../formulas/train-stages.ts'
import { plain } from '../quantities/plain.ts'
import { arborWorking } from './arbor-working.ts'
import { defineProof } from './define-proof.ts'
import { rateOfTrain, stagesOfRate } from './rate-of-train.ts'
import { rateStep } from './train-working.ts'

const wholeVibration = 0.5
const besides = ['fourthPinion', 'fourthWheel', 'fifthPinion', 'fifthWheel'] as const

/** The counts from centre wheel to escape wheel give the stated beat rate. */
export const beatRateFollowsTrain = defineProof({
  id: 'beat-rate-follows-train',
  title: 'Beat rate follows the train',
  meaning:
    'The counts of the train fix the beat rate to the vibration; where they give another than is stated, a count or the rate is misprinted, or a wheel is foreign.',
  needs: ['beatRateVph', 'centreWheel', 'thirdPinion', 'thirdWheel', 'escapePinion', 'escapeTeeth'],
  uses: [...besides, 'hoursPerCentreTurn'],
  lists: [],
  tolerance: {
    allows: 'half a vibration an hour; up to 0.3 % is doubtful',
    why:
      'A rate is printed to the whole vibration. One tooth more or less on any single wheel of up to 150 teeth shifts ' +
      'the rate by at least 0.67 %, so a difference below 0.3 % is a rounded or nominal figure and not one wrong count.',
  },
  source:
    'W. Derham, The Artificial Clock-maker, 1696, pp. 10–13; H. R. Playtner, An Analysis of the Lever Escapement, 1910, p. 7',
  validity:
    'Any plain train from the centre wheel to the escape wheel. A train without counts for a fourth arbor is read as ' +
    'having none only where it gives the stated rate so.',
  reasons: ['rate-agrees', 'rate-near', 'rate-differs'],
  missingBesides: (values) => {
    const stages = stagesOfRate(values)
    if (stageCounts(values, stages) !== null) return []
    const missing = missingCounts(values, stages)
    return besides.filter((key) => missing.includes(key))
  },
  judge: (values, { readings }) => {
    const stated = values.beatRateVph
    const train = rateOfTrain(values, readings)
    if (train === null) return { outcome: 'cannot-check', missing: missingCounts(values, stagesOfRate(values)) }
    const { exact, hours } = train
    const found = exact.valueOf()
    // `plain` has stripped the noise of binary sums, so an edge that was typed is met exactly.
    const difference = plain(found - stated)
    const off = Math.abs(difference)
    const agrees = off <= wholeVibration
    const near = off <= plain(stated * nominalRateShare)
    return {
      outcome: agrees ? 'agrees' : near ? 'doubtful' : 'disagrees',
      stated,
      found,
      unit: 'vph',
      difference,
      allowed: wholeVibration,
      // Worked out only when it is read: the whole library is proved far more often than its working is looked at.
      get working() {
        return [rateStep(values, train), ...arborWorking(values, hours)]
      },
      reason: agrees ? 'rate-agrees' : near ? 'rate-near' : 'rate-differs',
      details: { secondsPerDay: dailyDifference(found, stated) },
    }
  },
})
