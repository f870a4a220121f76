import { caliberFields } from '../fields/caliber-fields.ts'
import type { Misprint } from '../proofs/misprint-help.ts'
import type { Slip } from '../proofs/misreadings.ts'
import { figure } from './figure.ts'

const slips: Readonly<Record<Slip, string>> = {
  'digits-exchanged': 'two digits exchanged',
  'fraction-misread': 'a fraction misread',
  'digit-misread': 'one digit misread',
  'digit-doubled': 'a digit dropped or doubled',
  'decimal-shifted': 'the decimal mark one place off',
  neighbour: 'a neighbouring count',
  'other-digit': 'one digit different',
}

/** What one changed value would do: a hint where to look, never a correction. */
export const misprintSentence = (misprint: Misprint): string => {
  const { field, printed, meant, slip, found, unit, changesFound } = misprint
  const what =
    found === null || !changesFound
      ? 'would agree'
      : unit === 'vph'
        ? `gives ${figure(found)}`
        : `gives ${figure(found)} ${unit}`
  return `${caliberFields[field].label} ${meant} instead of ${printed} ${what} (${slips[slip]}).`
}
