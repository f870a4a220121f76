import { figure } from './figure.ts'
import { torqueBand } from './spring-reason.ts'

/** Changes smaller than this are none that a movement feels. */
const felt = 0.005

/**
 * The torque of a spring beside the one specified, in a few words.
 * @example
 * torqueText(1.1, 1.15) // '10 to 15 % more'
 * @example
 * torqueText(null, null) // '–'
 */
export const torqueText = (fullWind: number | null, rate: number | null): string => {
  if (fullWind === null) return '–'
  const full = fullWind - 1
  if (rate !== null) return Math.abs(full) < felt && Math.abs(rate - 1) < felt ? 'the same' : torqueBand(fullWind, rate)
  if (Math.abs(full) < felt) return 'the same at full wind'
  return `${figure(Math.abs(full) * 100, 1)} % ${full > 0 ? 'more' : 'less'} at full wind`
}
