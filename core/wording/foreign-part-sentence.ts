import type { MotionWorkFinding } from '../bench/counted-motion-work.ts'
import type { BenchFinding, Explanation, OtherCount, PutBack } from '../bench/foreign-part.ts'
import { labelOf } from '../record/label-of.ts'
import type { CountKey } from '../trains/cuttable-counts.ts'
import { figure } from './figure.ts'
import { listed } from './listed.ts'
import { workingLine } from './working-line.ts'

const wheels: Readonly<Partial<Record<CountKey, string>>> = { escapeTeeth: 'escape wheel', barrelTeeth: 'barrel' }
const part = (field: CountKey): string => wheels[field] ?? labelOf(field).toLowerCase()
const aPart = (field: CountKey): string => `${/^(?:[aeiou]|hour)/.test(part(field)) ? 'An' : 'A'} ${part(field)}`
const rate = (vph: number): string => figure(vph, 1)
const aDay = (seconds: number): string => `${figure(Math.abs(seconds), 1)} s a day`
const moreOrLess = (difference: number): string => (difference > 0 ? 'more' : 'less')

const secondsHand = ({ secondsTrue, rate: { secondsTurns } }: Explanation): string =>
  secondsTrue === null || secondsTurns === null
    ? ''
    : secondsTrue
      ? 'The seconds hand stays true with it.'
      : `The seconds hand then goes round ${figure(secondsTurns.valueOf(), 2)} times in an hour of the minute hand.`

/** What one part would explain, and what is to be remarked on it. */
export const explanationSentences = (explanation: Explanation): { readonly says: string; readonly remarks: string } => {
  const { field, specified, there, counted, exact, customary, restVph, restSecondsPerDay } = explanation
  const says = counted
    ? `The ${part(field)}, counted at ${there} instead of ${specified}, explains it`
    : `${aPart(field)} of ${there} instead of ${specified} would explain it`
  const remarks = [
    !exact && `${rate(Math.abs(restVph))} vph (${aDay(restSecondsPerDay)}) stay open, which the regulator may take up.`,
    !customary && 'Such a count is seldom cut.',
    secondsHand(explanation),
  ]
  return { says, remarks: remarks.filter(Boolean).join(' ') }
}

/** What the train gives with one part put back to the specification. */
export const putBackSentence = (
  { field, specified, rate: then, restores }: PutBack,
  specifiedVph: number | null,
): string => {
  const vph = then.vph.valueOf()
  const difference = specifiedVph === null ? 0 : vph - specifiedVph
  const still = restores
    ? ', the specified rate'
    : specifiedVph === null
      ? ''
      : `, still ${rate(Math.abs(difference))} vph ${moreOrLess(difference)} than specified`
  return `With ${aPart(field).toLowerCase()} of ${specified} again the train gives ${rate(vph)}${still}.`
}

const named = (parts: readonly OtherCount[]): string =>
  listed(parts.map(({ field, specified, there }) => `${part(field)} ${there} instead of ${specified}`))

const trainSentence = ({ bench, missing, difference, different, specifiedVph }: BenchFinding): string => {
  if (bench === null)
    return `The train gives no rate yet: ${listed(missing.map(part))} ${missing.length === 1 ? 'is' : 'are'} neither specified nor counted.`
  const gives = rate(bench.vph.valueOf())
  if (difference === null || specifiedVph === null) return `The train on the bench gives ${gives}.`
  if (Math.abs(difference.vph) <= 0.5)
    return different.length === 0
      ? `The train gives ${gives}, as specified.`
      : `The train gives ${gives}, as specified, although counts differ: ${named(different)}. Perhaps another execution of the caliber.`
  const off =
    `${gives}, ${rate(Math.abs(difference.vph))} vph ${moreOrLess(difference.vph)} than the ${rate(specifiedVph)} ` +
    `specified (${aDay(difference.secondsPerDay)})`
  if (different.length === 0)
    return `The counts give ${off}, and none that was made differs from the specification: look at the proof of the beat rate first.`
  return (
    `The train on the bench gives ${off}. With the balance at ${rate(specifiedVph)} the hands ` +
    `${difference.handsGain > 0 ? 'gain' : 'lose'} ${aDay(difference.handsGain)}.`
  )
}

const observedSentences = ({ observedTrainVph, withinRegulation, explanations, bench }: BenchFinding): string[] => {
  if (observedTrainVph === null || bench === null) return []
  const needs = `What was observed needs a train of ${rate(observedTrainVph)}.`
  if (withinRegulation)
    return [
      `${needs} The train on the bench gives that within what the regulator takes up: one tooth on any wheel would make far more.`,
    ]
  return explanations.length > 0
    ? [needs]
    : [
        `${needs} No single wheel or pinion close to the specified one explains it. Count the parts that are not counted yet: there may be two.`,
      ]
}

/** What the train on the bench says, the plainest first. */
export const benchSentences = (finding: BenchFinding): readonly string[] => {
  const { againstSecondsHand: others } = finding
  return [
    trainSentence(finding),
    ...observedSentences(finding),
    ...(others === 0
      ? []
      : [
          `${figure(others)} ${others === 1 ? 'part' : 'parts'} would explain the rate, but not what the seconds hand does.`,
        ]),
  ]
}

/** What the motion work on the bench says. */
export const motionWorkSentence = ({ working, needed, holds, different, restoring }: MotionWorkFinding): string => {
  if (holds)
    return different.length === 0
      ? `The hour hand keeps true: ${workingLine(working)}.`
      : `The hour hand keeps true, although counts differ (${named(different)}): ${workingLine(working)}.`
  const how = restoring
    .map(({ field, specified }) => ` ${aPart(field)} of ${specified} again would make it true.`)
    .join('')
  return `The hour hand strays: ${workingLine(working)}, where ${needed} are needed. The rate is not touched by it.${how}`
}
