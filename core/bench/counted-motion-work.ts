import type Fraction from 'fraction.js'
import { motionWorkRatio } from '../formulas/motion-work.ts'
import { asWritten } from '../proofs/exact-value.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import { fractionsOf } from '../proofs/train-working.ts'
import type { CaliberValues } from '../record/caliber.ts'
import type { CountedTeeth } from './bench-train.ts'
import type { OtherCount } from './foreign-part.ts'

/** The counts of the motion work, in the order in which it is driven. */
export const motionWorkKeys = ['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel'] as const

/** The motion work on the bench: it moves the hour hand and leaves the rate alone. */
export interface MotionWorkFinding {
  readonly ratio: Fraction
  readonly working: WorkingStep
  /** Turns of the minute hand that one turn of the hour hand must take: 12, or 24 with a 24-hour dial. */
  readonly needed: 12 | 24
  readonly holds: boolean
  readonly different: readonly OtherCount[]
  /** Of the parts counted different, those that make the hour hand true when they alone are put back. */
  readonly restoring: readonly OtherCount[]
}

const workOf = (values: CaliberValues) => {
  const { cannonPinion, minuteWheel, minutePinion, hourWheel } = values
  return cannonPinion === undefined ||
    minuteWheel === undefined ||
    minutePinion === undefined ||
    hourWheel === undefined
    ? null
    : { cannonPinion, minuteWheel, minutePinion, hourWheel }
}

/** The motion work with the counts made, the others as specified; null where a count is neither. */
export const countedMotionWork = (values: CaliberValues, counted: CountedTeeth): MotionWorkFinding | null => {
  const onBench = { ...values, ...counted }
  const work = workOf(onBench)
  if (work === null) return null
  const needed = values.dialHours === '24' ? 24 : 12
  const holdsFor = (now: CaliberValues) => {
    const then = workOf(now)
    return then !== null && motionWorkRatio(then).equals(needed)
  }
  const different = motionWorkKeys.flatMap((field): OtherCount[] => {
    const was = values[field]
    const there = counted[field]
    return was === undefined || there === undefined || was === there ? [] : [{ field, specified: was, there }]
  })
  const ratio = motionWorkRatio(work)
  return {
    ratio,
    working: {
      formula: fractionsOf([work.minuteWheel, work.hourWheel], [work.cannonPinion, work.minutePinion]),
      where: { ...work },
      gives: asWritten(ratio),
    },
    needed,
    holds: ratio.equals(needed),
    different,
    restoring: different.filter(({ field, specified }) => holdsFor({ ...onBench, [field]: specified })),
  }
}
