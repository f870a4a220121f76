import type { SizeVerdict, StripCompared } from '../springs/compare-strip.ts'
import type { EndMatch } from '../springs/end-compatibility.ts'
import { figure } from './figure.ts'
import { listed } from './listed.ts'
import { torqueBand } from './spring-reason.ts'

type SizeName = 'height' | 'thickness' | 'length'
interface Words {
  readonly word: string
  readonly mark: string
}

const more: Readonly<Record<SizeName, string>> = { height: 'higher', thickness: 'thicker', length: 'longer' }
const less: Readonly<Record<SizeName, string>> = { height: 'lower', thickness: 'thinner', length: 'shorter' }
const sizeNames = ['thickness', 'height', 'length'] as const
const decimals: Readonly<Record<SizeName, number>> = { height: 3, thickness: 4, length: 1 }

/** The word and the mark for a size of a strip beside the one specified. */
export const sizeVerdictWords = (name: SizeName, verdict: SizeVerdict): Words =>
  ({
    same: { word: 'as specified', mark: '✓' },
    more: { word: more[name], mark: '✕' },
    less: { word: less[name], mark: '✕' },
    'cannot-tell': { word: 'cannot tell', mark: '△' },
    'not-measured': { word: 'not measured', mark: '○' },
    'not-specified': { word: 'not specified', mark: '○' },
  })[verdict]

/** The word and the mark for the end of a strip beside the one specified. */
export const endMatchWords: Readonly<Record<EndMatch, Words>> = {
  same: { word: 'as specified', mark: '✓' },
  alike: { word: 'hooks alike', mark: '△' },
  'no-hold': { word: 'does not hold', mark: '✕' },
  'not-known': { word: 'cannot tell', mark: '○' },
}

/** By how much a size differs, in millimetres; a dash where that is not known. */
export const sizeDifference = (name: SizeName, difference: number | null): string =>
  difference === null ? '–' : `${difference > 0 ? '+' : ''}${figure(difference, decimals[name])}\u202fmm`

const ofVerdict = ({ height, thickness, length }: StripCompared, ...verdicts: readonly SizeVerdict[]) => {
  const sizes = { height, thickness, length }
  return sizeNames.map((name) => ({ name, ...sizes[name] })).filter(({ verdict }) => verdicts.includes(verdict))
}
const by = (difference: number | null, name: SizeName) => `${figure(Math.abs(difference ?? 0), decimals[name])} mm`

/** What the strip does to turns and torque, beside the one specified; nothing where neither is known to change. */
const effectSentence = ({ specified, found, torqueRate, torqueFullWind }: StripCompared): string => {
  const turns = specified.turns === null || found.turns === null ? 0 : found.turns - specified.turns
  const hours = specified.hours === null || found.hours === null ? 0 : found.hours - specified.hours
  const inHours = Math.abs(hours) < 0.5 ? '' : ` (${figure(Math.abs(hours), 0)} h)`
  const turned =
    Math.abs(turns) < 0.05 ? '' : `${figure(Math.abs(turns), 1)} turns ${turns < 0 ? 'fewer' : 'more'}${inHours}`
  const full = torqueFullWind ?? 1
  const rate = torqueRate ?? full
  const torque = Math.abs(full - 1) < 0.005 && Math.abs(rate - 1) < 0.005 ? '' : `some ${torqueBand(full, rate)} torque`
  const gives = [turned, torque].filter((part) => part !== '')
  return gives.length === 0 ? '' : ` It gives ${listed(gives)}.`
}

const jams = ({ found }: StripCompared): string =>
  found.clearanceMm !== null && found.clearanceMm < 0
    ? ` It is ${figure(-found.clearanceMm, 3)} mm higher than the barrel is deep.`
    : ''

const overfills = ({ found }: StripCompared): string =>
  found.fill !== null && found.fill >= 1 ? ' It would take all the free space, which cannot be: measure again.' : ''

/** What the strip in the barrel is beside the one specified, and what it does, in plain words. */
export const stripSentence = (compared: StripCompared): string => {
  const others = ofVerdict(compared, 'more', 'less')
  if (compared.verdict === 'foreign') {
    const differs = others.map(
      ({ name, verdict, difference }) => `${by(difference, name)} ${verdict === 'more' ? more[name] : less[name]}`,
    )
    const is = differs.length === 0 ? '' : `is ${listed(differs)} than specified`
    const end = compared.end === 'no-hold' ? 'has an end that does not hold in this barrel' : ''
    const what = [is, end].filter((part) => part !== '').join(' and ')
    return `The strip in the barrel ${what}: not the maker’s spring.${effectSentence(compared)}${jams(compared)}${overfills(compared)}`
  }
  const same = ofVerdict(compared, 'same').map(({ name }) => name)
  if (compared.verdict === 'specified') {
    return `The strip in the barrel is the one specified, as far as it was measured: ${listed(same)}.`
  }
  const unsure = ofVerdict(compared, 'cannot-tell')
  if (unsure.length > 0) {
    return (
      'Whether it is the spring specified cannot be told: ' +
      `${listed(unsure.map(({ name, difference }) => `the ${name} is ${by(difference, name)} off`))}, within what the reading leaves open. ` +
      'Measure again at several places, or with a finer instrument.'
    )
  }
  if (compared.end === 'alike') {
    return 'Its end hooks as the one specified does, but is another: look at the hook in the barrel.'
  }
  if (ofVerdict(compared, 'not-measured').length === sizeNames.length) {
    return 'Measure the strip: thickness and height first, they decide its strength.'
  }
  return 'What was measured is not specified for this caliber, so there is nothing to set it beside.'
}
