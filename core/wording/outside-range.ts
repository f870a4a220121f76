import type { OutsideRangeCode } from '../formulas/outside-range.ts'
import { labelOf } from '../record/label-of.ts'
import { figure } from './figure.ts'

type Details = Readonly<Record<string, number | string>>

const mm = (details: Details, key: string) => figure(Number(details[key] ?? 0), 3)

const sentences: Readonly<Record<OutsideRangeCode, (details: Details) => string>> = {
  'not-positive': (d) => `The ${labelOf(String(d.field)).toLowerCase()} must be more than nothing. Correct it.`,
  'arbor-fills-barrel': (d) =>
    `A barrel arbor of ${mm(d, 'barrelArborMm')} mm leaves no room in a barrel of ${mm(d, 'barrelInsideMm')} mm. ` +
    'Measure both again: the arbor at the hub, the barrel inside.',
  'bridle-fills-barrel': (d) =>
    `A bridle of ${mm(d, 'bridleThicknessMm')} mm leaves no room in a barrel of ${mm(d, 'barrelInsideMm')} mm. Measure both again.`,
  'spring-overfills-barrel': (d) =>
    `The spring takes ${figure(Number(d.fill ?? 0) * 100, 1)} % of the free space, so it cannot be wound in this barrel ` +
    'and no turns follow. Check its length and thickness and the barrel’s sizes.',
}

/** Why a proof's figures lie outside the range of its formula, in plain words. */
export const outsideRangeSentence = (reason: string, details: Details = {}): string =>
  Object.hasOwn(sentences, reason) ? sentences[reason as OutsideRangeCode](details) : reason
