import Fraction from 'fraction.js'
import type { PrintedUnit } from './quantity.ts'

/**
 * One ligne of the Paris foot in millimetres: 31250/13853 exactly, since the metre was fixed at 443.296 lignes.
 * @source law of 19 frimaire year VIII (10 December 1799), as quoted in GNU units 2.22, definitions.units
 */
export const ligneMm: Fraction = new Fraction(31250n, 13853n)

/** The units in which a handbook prints a length. */
export type LengthUnit = Extract<
  PrintedUnit,
  'mm' | 'tenths-mm' | 'hundredths-mm' | 'micrometre' | 'ligne' | 'douzieme' | 'inch'
>

/** Millimetres in one of each unit. `18/100` is the fraction of a millimetre itself, so its unit counts as one. */
export const lengthUnitMm: Readonly<Record<LengthUnit, Fraction>> = {
  mm: new Fraction(1),
  'tenths-mm': new Fraction(1),
  'hundredths-mm': new Fraction(1),
  micrometre: new Fraction(1n, 1000n),
  ligne: ligneMm,
  douzieme: ligneMm.div(12),
  inch: new Fraction(254n, 10n),
}

const lengthWords: readonly (readonly [LengthUnit, RegExp])[] = [
  ['mm', /^(?:mm|millim[eèé]t(?:er|re|res|ers)s?)\.?$/],
  ['micrometre', /^(?:µm|um|µ|microns?|microm[eèé]t(?:er|re)s?)\.?$/],
  ['ligne', /^(?:'''|lig|lignes?|linien?|lijn(?:en)?)\.?$/],
  ['douzieme', /^(?:dz|dzs|douz|douzi[eè]mes?|zwölftel)\.?$/],
  ['inch', /^(?:"|in|inch|inches|zoll)\.?$/],
]

/** The unit that a word or mark after a figure stands for; undefined where it is none. `line` is left out: the English line is another length. */
export const lengthUnitOf = (word: string): LengthUnit | undefined =>
  lengthWords.find(([, pattern]) => pattern.test(word))?.[0]
