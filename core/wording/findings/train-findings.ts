import { labelOf } from '../../record/label-of.ts'
import { figure } from '../figure.ts'
import { detail, found, type Judged, off, type Sentences, stated } from './judged.ts'

const rateOff = (judgement: Judged) => {
  const more = (judgement.difference ?? 0) > 0 ? 'more' : 'less'
  const seconds = Math.abs(Number(judgement.details?.secondsPerDay ?? 0))
  return `the train gives ${found(judgement)}, ${off(judgement)} ${more} (${figure(seconds, 1)} s a day)`
}

const rateFrom = (judgement: Judged) =>
  judgement.details?.of === 'stated'
    ? `${found(judgement)} vibrations an hour is stated`
    : `The train gives ${found(judgement)} vibrations an hour`

const uncut = (judgement: Judged) =>
  `${stated(judgement)} is stated for the ${labelOf(detail(judgement, 'field')).toLowerCase()}`

const othersUncut = (judgement: Judged) => {
  const others = Number(judgement.details?.others ?? 0)
  return others === 0 ? '' : `, and ${others} other ${others === 1 ? 'count' : 'counts'} beside it`
}

const handArbors: Readonly<Record<string, string>> = {
  fourth: 'fourth arbor',
  escape: 'escape arbor',
  sweep: 'sweep pinion',
}

const secondsTurns = (judgement: Judged) =>
  `The ${handArbors[detail(judgement, 'arbor')] ?? 'seconds arbor'} turns ${detail(judgement, 'found')} times an hour`

/** What the proofs of train and motion work find. */
export const trainFindings: Sentences = {
  'rate-agrees': (j) => `The train gives the stated ${stated(j)} vibrations an hour.`,
  'rate-near': (j) =>
    `${stated(j)} vibrations an hour is stated; ${rateOff(j)}. So small a difference is usually a rounded or nominal rate: ` +
    'look up the exact rate, or remark that it is nominal.',
  'rate-differs': (j) =>
    `${stated(j)} vibrations an hour is stated; ${rateOff(j)}. Count the wheels and pinions again, or look the rate up ` +
    'in another source.',
  'rate-customary': (j) => `${rateFrom(j)}, a customary rate.`,
  'rate-of-old': (j) => `${rateFrom(j)}, a rate of old watches and clocks: ${detail(j, 'source')}.`,
  'rate-outdated': (j) =>
    `${rateFrom(j)}, a rate of old watches and clocks (${detail(j, 'source')}), which is uncommon in the year that is stated. ` +
    'Count the train again, or look the year up.',
  'rate-uncommon': (j) =>
    `${rateFrom(j)}, which is none of the customary rates; the nearest is ${figure(Number(j.details?.nearest))}, ` +
    `${off(j)} ${(j.difference ?? 0) < 0 ? 'more' : 'fewer'}. Many old and special trains have a rate of their ` +
    'own, so this alone is no error; in a common watch, count the train again.',
  'counts-cuttable': (j) =>
    j.details?.count === 1
      ? 'The one count that is stated is one that the trade cuts.'
      : `All ${detail(j, 'count')} counts that are stated are such as the trade cuts.`,
  'counts-few': (j) =>
    `${uncut(j)}, fewer than the ${found(j)} that are cut at the least${othersUncut(j)}. Count it again.`,
  'counts-many': (j) =>
    `${uncut(j)}, more than the ${found(j)} that are cut at the most${othersUncut(j)}. Count it again.`,
  'counts-not-whole': (j) => `${uncut(j)}, and a count is whole${othersUncut(j)}. Count it again.`,
  'seconds-true': (j) => `${secondsTurns(j)}, so the seconds hand goes round once a minute.`,
  'seconds-false': (j) =>
    `${secondsTurns(j)}, where a seconds hand needs 60. Count the wheels and pinions between centre and seconds hand ` +
    'again, or correct the seconds display.',
  'hour-hand-true': (j) => `The motion work turns the minute hand ${stated(j)} times for each turn of the hour hand.`,
  'hour-hand-false': (j) =>
    `The motion work turns the minute hand ${detail(j, 'found')} times for each turn of the hour hand, where ` +
    `${stated(j)} are needed. Count cannon pinion, minute wheel, minute pinion and hour wheel again.`,
}
