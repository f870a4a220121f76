import { fillVerdict } from './fill-verdict.ts'
import type { SpringCase, SpringTask } from './spring-case.ts'
import { springLimits as limits } from './spring-limits.ts'

/** How a spring does for a caliber, best first. */
export const springVerdicts = ['as-specified', 'acceptable', 'not-advised', 'does-not-fit'] as const
export type SpringVerdict = (typeof springVerdicts)[number]

interface ReasonRow {
  /** The best verdict that a spring can still have where this holds. */
  readonly atBest: SpringVerdict
  readonly holds: (found: SpringCase, task: SpringTask) => boolean
  /** The figures of the sentence. */
  readonly figures: (found: SpringCase, task: SpringTask) => Readonly<Record<string, number | string>>
}

const none = () => ({})

/** Everything that can be said of a spring for a caliber, the gravest first: one row a reason. */
export const springReasons = {
  'height-jams': {
    atBest: 'does-not-fit',
    holds: ({ clearanceMm }) => clearanceMm < 0,
    figures: ({ clearanceMm }) => ({ overMm: -clearanceMm }),
  },
  'fill-over': {
    atBest: 'does-not-fit',
    holds: ({ fill }) => fill >= 1,
    figures: ({ fill }) => ({ fill }),
  },
  'end-no-hold': {
    atBest: 'does-not-fit',
    holds: ({ end }) => end === 'no-hold',
    figures: (_, { values }) => ({ specified: values.springEnd ?? '' }),
  },
  'not-specified': {
    atBest: 'not-advised',
    holds: (_, { heightMm, thicknessMm }) => Number.isNaN(heightMm) || Number.isNaN(thicknessMm),
    figures: none,
  },
  thicker: {
    atBest: 'not-advised',
    holds: ({ thickerMm }) => thickerMm > limits.sameThicknessMm,
    figures: ({ thickerMm, torqueRate, torqueFullWind }) => ({ byMm: thickerMm, torqueRate, torqueFullWind }),
  },
  'torque-high': {
    atBest: 'not-advised',
    holds: ({ torqueFullWind, thickerMm }) =>
      torqueFullWind > limits.mostTorque && !(thickerMm > limits.sameThicknessMm),
    figures: ({ torqueFullWind }) => ({ torqueFullWind }),
  },
  'torque-low': {
    atBest: 'not-advised',
    holds: ({ torqueFullWind }) => torqueFullWind < limits.leastTorque,
    figures: ({ torqueRate, torqueFullWind }) => ({ torqueRate, torqueFullWind }),
  },
  'hours-short': {
    atBest: 'not-advised',
    holds: ({ hours }, { goingHours }) => hours < goingHours * (1 - limits.hoursShort),
    figures: ({ hours }, { goingHours }) => ({ hours, stated: goingHours }),
  },
  'fill-far': {
    atBest: 'not-advised',
    holds: ({ fill }) => fill < 1 && fillVerdict(fill) === 'disagrees',
    figures: ({ fill }) => ({ fill }),
  },
  'height-unproved': {
    atBest: 'not-advised',
    holds: ({ clearanceMm, higherMm }) => Number.isNaN(clearanceMm) && higherMm > limits.sameHeightMm,
    figures: ({ higherMm }) => ({ byMm: higherMm }),
  },
  'height-close': {
    atBest: 'acceptable',
    holds: ({ clearanceMm, higherMm }) =>
      clearanceMm >= 0 && clearanceMm < limits.closeMm && !(Math.abs(higherMm) <= limits.sameHeightMm),
    figures: ({ clearanceMm }) => ({ clearanceMm }),
  },
  'height-low': {
    atBest: 'not-advised',
    holds: ({ higherMm }) => higherMm < -limits.lowerMm,
    figures: ({ higherMm }) => ({ byMm: -higherMm }),
  },
  lower: {
    atBest: 'acceptable',
    holds: ({ higherMm }) => higherMm < -limits.sameHeightMm && higherMm >= -limits.lowerMm,
    figures: ({ higherMm, torqueFullWind }) => ({ byMm: -higherMm, torqueFullWind }),
  },
  higher: {
    atBest: 'acceptable',
    holds: ({ higherMm, clearanceMm }) => higherMm > limits.sameHeightMm && clearanceMm >= limits.closeMm,
    figures: ({ higherMm, clearanceMm }) => ({ byMm: higherMm, clearanceMm }),
  },
  thinner: {
    atBest: 'acceptable',
    holds: ({ thickerMm, torqueFullWind }) =>
      thickerMm < -limits.sameThicknessMm && !(torqueFullWind < limits.leastTorque),
    figures: ({ thickerMm, torqueRate, torqueFullWind }) => ({ byMm: -thickerMm, torqueRate, torqueFullWind }),
  },
  longer: {
    atBest: 'acceptable',
    holds: ({ longerShare }) => longerShare > limits.sameLengthShare,
    figures: ({ longerShare, turns }) => ({ share: longerShare, turns }),
  },
  shorter: {
    atBest: 'acceptable',
    holds: ({ longerShare }) => longerShare < -limits.sameLengthShare,
    figures: ({ longerShare, turns }) => ({ share: -longerShare, turns }),
  },
  'fill-off': {
    atBest: 'acceptable',
    holds: ({ fill }) => fillVerdict(fill) === 'doubtful',
    figures: ({ fill }) => ({ fill }),
  },
  'end-alike': {
    atBest: 'acceptable',
    holds: ({ end }) => end === 'alike',
    figures: (_, { values }) => ({ specified: values.springEnd ?? '' }),
  },
  'end-not-known': {
    atBest: 'acceptable',
    holds: ({ end }) => end === 'not-known',
    figures: none,
  },
  'other-material': {
    atBest: 'acceptable',
    holds: ({ otherMaterial }) => otherMaterial,
    figures: (_, { values }) => ({ specified: values.springMaterial ?? '' }),
  },
  'length-not-specified': {
    atBest: 'acceptable',
    holds: (_, { lengthMm }) => Number.isNaN(lengthMm),
    figures: none,
  },
  'length-not-given': {
    atBest: 'acceptable',
    holds: ({ longerShare }, { lengthMm }) => Number.isNaN(longerShare) && !Number.isNaN(lengthMm),
    figures: none,
  },
  'barrel-not-known': {
    atBest: 'as-specified',
    holds: (_, { wallMm, hubMm }) => Number.isNaN(wallMm) || Number.isNaN(hubMm),
    figures: none,
  },
  'none-left': {
    atBest: 'as-specified',
    holds: ({ noneLeft }) => noneLeft,
    figures: none,
  },
} as const satisfies Record<string, ReasonRow>

export type SpringReasonCode = keyof typeof springReasons

/** Something that speaks for or against a spring, with its figures; `core/wording/spring-reason.ts` says it. */
export interface SpringReason {
  readonly code: SpringReasonCode
  readonly figures: Readonly<Record<string, number | string>>
}
