import type { Judgement } from '../proofs/proof.ts'
import { baseSentence } from './base-sentence.ts'
import { figure } from './figure.ts'
import { sourcesSentence } from './sources-sentence.ts'

type Judged = Extract<Judgement, { outcome: 'agrees' | 'disagrees' | 'doubtful' }>

const detail = (judgement: Judged, key: string): string => {
  const value = judgement.details?.[key]
  return value === undefined ? '' : typeof value === 'number' ? figure(value, 2) : value
}
const stated = (judgement: Judged, decimals = 2) => figure(judgement.stated ?? 0, decimals)
const found = (judgement: Judged, decimals = 2) => figure(judgement.found ?? 0, decimals)
const off = (judgement: Judged, decimals = 2) => figure(Math.abs(judgement.difference ?? 0), decimals)

const rateOff = (judgement: Judged) => {
  const more = (judgement.difference ?? 0) > 0 ? 'more' : 'less'
  const seconds = Math.abs(Number(judgement.details?.secondsPerDay ?? 0))
  return `the train gives ${found(judgement)}, ${off(judgement)} ${more} (${figure(seconds, 1)} s a day)`
}

const openBarrel =
  'Let the mainspring down fully before opening the barrel, protect your eyes, and follow the maker’s specification.'

const goingHours = (judgement: Judged) =>
  `${stated(judgement)} h of going is stated; ${detail(judgement, 'turns')} turns ` +
  `${judgement.details?.limit === 'stop-work' ? 'of the stop work' : 'of the spring (theoretical)'} at ` +
  `${detail(judgement, 'hoursPerTurn')} h a turn give ${found(judgement)} h`

const handArbors: Readonly<Record<string, string>> = {
  fourth: 'fourth arbor',
  escape: 'escape arbor',
  sweep: 'sweep pinion',
}
const secondsTurns = (judgement: Judged) =>
  `The ${handArbors[detail(judgement, 'arbor')] ?? 'seconds arbor'} turns ${detail(judgement, 'found')} times an hour`

const roomTaken = (judgement: Judged) =>
  `The spring takes ${figure((judgement.found ?? 0) * 100, 1)} % of the free space`

const tally = (judgement: Judged) => `${stated(judgement)} jewels are stated and ${found(judgement)} are listed`

const sentences: Readonly<Record<string, (judgement: Judged) => string>> = {
  'rate-agrees': (j) => `The train gives the stated ${stated(j)} vibrations an hour.`,
  'rate-near': (j) =>
    `${stated(j)} vibrations an hour is stated; ${rateOff(j)}. So small a difference is usually a rounded or nominal rate: ` +
    'look up the exact rate, or remark that it is nominal.',
  'rate-differs': (j) =>
    `${stated(j)} vibrations an hour is stated; ${rateOff(j)}. Count the wheels and pinions again, or look the rate up ` +
    'in another source.',
  'seconds-true': (j) => `${secondsTurns(j)}, so the seconds hand goes round once a minute.`,
  'seconds-false': (j) =>
    `${secondsTurns(j)}, where a seconds hand needs 60. Count the wheels and pinions between centre and seconds hand ` +
    'again, or correct the seconds display.',
  'hour-hand-true': (j) => `The motion work turns the minute hand ${stated(j)} times for each turn of the hour hand.`,
  'hour-hand-false': (j) =>
    `The motion work turns the minute hand ${detail(j, 'found')} times for each turn of the hour hand, where ` +
    `${stated(j)} are needed. Count cannon pinion, minute wheel, minute pinion and hour wheel again.`,
  'fill-usual': (j) => `${roomTaken(j)}, near the half that gives the most turns.`,
  'fill-low': (j) =>
    `${roomTaken(j)}, less than the usual 40 to 60 %. Check length and thickness: the spring seems short or thin for ` +
    `this barrel. ${openBarrel}`,
  'fill-high': (j) =>
    `${roomTaken(j)}, more than the usual 40 to 60 %. Check length and thickness: the spring seems long or thick for ` +
    `this barrel. ${openBarrel}`,
  'fill-over': (j) =>
    `${roomTaken(j)}, so it does not fit in the barrel. Check its length and thickness and the barrel’s sizes. ${openBarrel}`,
  'stands-free': (j) => `The spring stands ${off(j, 3)} mm below the lid.`,
  'stands-close': (j) =>
    `The spring is ${stated(j, 3)} mm high in a barrel ${found(j, 3)} mm deep: only ${off(j, 3)} mm of play, where about ` +
    `${detail(j, 'usualMm')} mm is usual under a flat lid. That may do where the lid is recessed; look at the lid. ${openBarrel}`,
  'stands-loose': (j) =>
    `The spring is ${stated(j, 3)} mm high in a barrel ${found(j, 3)} mm deep: ${off(j, 3)} mm of play, where about ` +
    `${detail(j, 'usualMm')} mm is usual. Check height and depth. ${openBarrel}`,
  'stands-proud': (j) =>
    `The spring is ${stated(j, 3)} mm high in a barrel ${found(j, 3)} mm deep: ${off(j, 3)} mm too high, so it would jam ` +
    `under the lid. Check height and depth. ${openBarrel}`,
  'hours-agree': (j) => `${goingHours(j)}, which agrees.`,
  'hours-short': (j) =>
    `${goingHours(j)}, ${off(j)} h too few. Check the barrel teeth and centre pinion, the spring’s sizes and the stated ` +
    `hours. ${openBarrel}`,
  'hours-over': (j) =>
    `${goingHours(j)}, ${off(j)} h more than stated. Check the barrel teeth and centre pinion, the spring’s sizes and the ` +
    `stated hours. ${openBarrel}`,
  'jewels-agree': (j) => `The jewels listed come to the stated ${stated(j)}.`,
  'jewels-short': (j) => `${tally(j)}: ${off(j)} too few. Look for a place that is not listed, or correct the total.`,
  'jewels-over': (j) => `${tally(j)}: ${off(j)} too many. Look for a place listed twice, or correct the total.`,
  'readings-agree': (j) =>
    j.details?.fields === 1
      ? 'The readings of the field with more than one meet within their printed rounding.'
      : `In ${detail(j, 'fields')} fields with more than one reading they meet within their printed rounding.`,
  'readings-differ': sourcesSentence,
  'base-kept': (j) => `Train and barrel are stated as those of the base, ${detail(j, 'basedOn')}.`,
  'base-unstated': (j) => `Train and barrel are taken from the base, ${detail(j, 'basedOn')}.`,
  'base-differs': baseSentence,
}

/** What a proof found, in plain words: what was stated, what was found, by how much, what to do. */
export const findingSentence = (judgement: Judged): string =>
  sentences[judgement.reason]?.(judgement) ?? judgement.reason
