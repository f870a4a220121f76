import { motionWorkRatio } from '../formulas/motion-work.ts'
import { plain } from '../quantities/plain.ts'
import { defineProof } from './define-proof.ts'
import { asWritten } from './exact-value.ts'
import { fractionsOf } from './train-working.ts'

/** The motion work turns the hour hand once in 12 turns of the minute hand, or in 24 with a 24-hour dial. */
export const hourHandFollowsMinuteHand = defineProof({
  id: 'hour-hand-follows-minute-hand',
  title: 'Hour hand follows the minute hand',
  meaning:
    'The motion work brings the hour hand once round in twelve turns of the minute hand, or in twenty-four; any other count of teeth makes the hands disagree within hours.',
  needs: ['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel'],
  uses: ['dialHours'],
  lists: [],
  tolerance: {
    allows: 'nothing: exactly 12 to 1, or 24 to 1 with a 24-hour dial',
    why: 'Whole counts give the ratio exactly, or the hour hand strays further every day.',
  },
  source: 'W. L. Goodrich, The Modern Clock, 1905, p. 293; W. Derham, The Artificial Clock-maker, 1696, pp. 121–122',
  validity: 'Motion work of two pairs from the cannon pinion: cannon to minute wheel, minute pinion to hour wheel.',
  reasons: ['hour-hand-true', 'hour-hand-false'],
  judge: (values) => {
    const { cannonPinion, minuteWheel, minutePinion, hourWheel } = values
    const stated = values.dialHours === '24' ? 24 : 12
    const exact = motionWorkRatio(values)
    const found = exact.valueOf()
    const agrees = minuteWheel * hourWheel === stated * cannonPinion * minutePinion
    return {
      outcome: agrees ? 'agrees' : 'disagrees',
      stated,
      found,
      unit: 'turns to one',
      difference: plain(found - stated),
      allowed: 0,
      working: [
        {
          formula: fractionsOf([minuteWheel, hourWheel], [cannonPinion, minutePinion]),
          where: { minuteWheel, cannonPinion, hourWheel, minutePinion },
          gives: asWritten(exact),
        },
      ],
      reason: agrees ? 'hour-hand-true' : 'hour-hand-false',
      details: { found: asWritten(exact) },
    }
  },
})
