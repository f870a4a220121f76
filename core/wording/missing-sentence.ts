import { caliberFields } from '../fields/caliber-fields.ts'
import { asWritten } from '../proofs/exact-value.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { labelOf } from '../record/label-of.ts'
import type { AnswerRemark } from '../trains/answer-remarks.ts'
import { type CountKey, countKeys } from '../trains/cuttable-counts.ts'
import type { DecidingMeasurement } from '../trains/deciding-measurement.ts'
import type { MissingAnswer } from '../trains/missing-counts.ts'
import type { UnboundCount } from '../trains/missing-question.ts'
import type { NearestAnswer } from '../trains/nearest-answers.ts'
import type { Statement } from '../trains/train-relations.ts'
import { figure } from './figure.ts'
import { listed } from './listed.ts'

const nameOf = (key: CountKey): string => caliberFields[key].label.toLowerCase()
/** With its article: 'an escape pinion'; teeth stand without one. */
const oneOf = (key: CountKey): string =>
  key.endsWith('Teeth') ? nameOf(key) : `${/^[aeiou]/.test(nameOf(key)) ? 'an' : 'a'} ${nameOf(key)}`
const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`
const rateText = (rate: number | string): string => (typeof rate === 'number' ? figure(rate) : rate)
const percent = (share: number): string => `${figure(Math.abs(share) * 100, 1)} %`
const shown = 5

/** Counts with their names: 'third wheel 75, fourth pinion 10'. */
export const countsText = (counts: Readonly<Partial<Record<CountKey, number>>>): string =>
  Object.entries(counts)
    .map(([key, count]) => `${nameOf(key as CountKey)} ${count}`)
    .join(', ')

/**
 * A remark on an answer, as a sentence.
 * @example
 * missingRemark({ code: 'uncommon-leaves', key: 'fourthPinion', count: 9 }) // 'A fourth pinion of 9 leaves is seldom cut.'
 */
export const missingRemark = (remark: AnswerRemark): string => {
  switch (remark.code) {
    case 'unusual-count': {
      const { key, count, usual } = remark
      const are = key.endsWith('Teeth') ? 'are' : 'is'
      return sentence(`${oneOf(key)} of ${count} ${are} unusual; ${usual[0]} to ${usual[1]} ${are} usual`)
    }
    case 'uncommon-leaves':
      return sentence(`${oneOf(remark.key)} of ${remark.count} leaves is seldom cut`)
    case 'steep-pair':
      return sentence(
        `${nameOf(remark.driver)} and ${nameOf(remark.driven)} stand ${figure(remark.ratio)} to one, steep for a single pair`,
      )
    case 'rate-rounded':
      return sentence(
        `the train gives ${rateText(remark.rate)} an hour, which rounds to the stated ${figure(remark.stated)}`,
      )
    case 'sizes-differ': {
      const { driver, driven, share, clear } = remark
      const off = `the sizes of ${nameOf(driver)} and ${nameOf(driven)} give a ratio ${percent(share)} ${share > 0 ? 'greater' : 'smaller'}`
      return sentence(
        clear ? `${off}: they speak against these counts, and no other count that is cut suits them` : off,
      )
    }
    case 'module-by-distance': {
      const { driver, driven, distanceMm, moduleMm } = remark
      return sentence(
        `with ${figure(distanceMm, 3)} mm between the centres of ${nameOf(driver)} and ${nameOf(driven)} their module is ${figure(moduleMm, 4)} mm`,
      )
    }
    case 'no-fourth-arbor':
      return 'The train is taken to have no fourth arbor.'
  }
}

/** What to count or measure so that few answers are left, as a sentence. */
export const decidingSentence = (measurement: DecidingMeasurement): string => {
  const { left } = measurement
  const leaves = left === 1 ? 'each leaves one answer' : `${left} answers at most are left`
  if (measurement.kind === 'count') {
    const { key, counts } = measurement
    const some = counts.slice(0, 2 * shown)
    const rest = counts.length > some.length ? ' and so on' : ''
    return sentence(`count the ${nameOf(key)}: ${some.join(', ')}${rest}; ${leaves}`)
  }
  const { driver, driven, pairs } = measurement
  const some = pairs
    .slice(0, shown)
    .map(({ driver: over, driven: under, modules }) => `${figure(modules)} modules for ${over}/${under}`)
  const rest = pairs.length > some.length ? ', and so on' : ''
  const distance = `measure between the centres of ${nameOf(driver)} and ${nameOf(driven)}: ${some.join(', ')}${rest}; ${leaves}`
  return `${sentence(distance)} The module is a wheel’s pitch diameter divided by its teeth.`
}

/** Why a count cannot be worked out, and what would bind it. */
export const unboundSentence = ({ key, waitsFor }: UnboundCount): string =>
  waitsFor.length > 0
    ? `Without the ${listed(waitsFor.map((each) => labelOf(each).toLowerCase()))} the ${nameOf(key)} cannot be worked out. State ${waitsFor.length === 1 ? 'it' : 'them'}, or look for ${waitsFor.length === 1 ? 'it' : 'them'} too.`
    : key === 'sweepDriver' || key === 'sweepPinion'
      ? `Nothing stated binds the ${nameOf(key)}: it counts where the seconds display is centre, indirect. State that, or a depth with two of its three sizes.`
      : `Nothing stated binds the ${nameOf(key)}: neither beat rate nor hands depend on it. A depth with two of its three sizes would bind it.`

const ahead = (seconds: number, what: string): string =>
  `${what} ${figure(Math.abs(seconds), 1)} s a day ${seconds > 0 ? 'more' : 'less'} than stated`

/** How far the nearest whole numbers miss, as a sentence. */
export const nearestSentence = (nearest: NearestAnswer): string => {
  const { counts, rate, rateErrorSecondsPerDay: off, secondsHandErrorSecondsPerDay: hand, hourHandTurns } = nearest
  const misses = [
    rate === null || off === null ? [] : [`${rateText(asWritten(rate))} an hour, ${ahead(off, 'which is')}`],
    hand === null || hand === 0 ? [] : [ahead(hand, 'a seconds hand that shows')],
    hourHandTurns === null ? [] : [`a motion work of ${rateText(asWritten(hourHandTurns))} to one`],
  ].flat()
  return sentence(`${countsText(counts)} gives ${listed(misses)}`)
}

/** What was found, in one sentence. */
export const missingSentence = ({ unknown, solutions, nearest, complete }: MissingAnswer): string => {
  const names = listed(unknown.map(nameOf))
  const [first] = solutions
  if (first === undefined)
    return nearest.length > 0
      ? `No whole number of teeth that is cut fits: ${names}. A stated figure or another count may be wrong.`
      : `No whole number of teeth that is cut comes near: ${names}. A stated figure or another count is wrong.`
  if (!complete)
    return `More answers than can be listed fit; these are ${solutions.length} usual ones. State one count more.`
  return solutions.length === 1
    ? `One answer fits: ${countsText(first.counts)}.`
    : `${solutions.length} answers fit, the most customary first.`
}

const beforeCentre: readonly CountKey[] = ['barrelTeeth', 'intermediatePinion', 'intermediateWheel', 'centrePinion']

/** Why there is nothing to look for. */
export const nothingMissingSentence = (values: CaliberValues): string => {
  const stated = countKeys.filter((key) => values[key] !== undefined)
  if (stated.length === 0)
    return 'Neither a beat rate nor a count is stated, so nothing can be worked out. State what is known of the train.'
  return stated.every((key) => beforeCentre.includes(key))
    ? 'Only counts from the barrel to the centre are stated, and no rate or hand depends on them. State what is known of the train.'
    : 'No count is missing. Name the counts to look for, as for a wheel that is lost.'
}

/** What a count that was worked out rests on, as the note of its reading. */
export const workedOutNote = (rests: readonly Statement[], { beatRateVph, dialHours }: CaliberValues): string => {
  const words: Readonly<Record<Statement, string>> = {
    rate: `the beat rate${beatRateVph === undefined ? '' : ` ${figure(beatRateVph)} vph`}`,
    seconds: 'the seconds hand that turns once a minute',
    'hour-hand': `the motion work of ${dialHours === '24' ? 24 : 12} to one`,
    sizes: 'the measured depth',
    steepness: 'the steepest pair that is cut',
  }
  return `worked out from ${listed(rests.map((each) => words[each]))}`
}
