import { expect, it } from 'vitest'
import { misreadings } from '../../../core/proofs/misreadings.ts'

const slipOf = (printed: string, meant: string) => misreadings(printed).find((one) => one.printed === meant)?.slip

it.each([
  ['57', '75', 'digits-exchanged'],
  ['0,81', '0,18', 'digits-exchanged'],
  ['18 000', '10 800', 'digits-exchanged'],
  ['18 000', '15 000', 'other-digit'],
  ['8¾‴', '8¼‴', 'fraction-misread'],
  ["8 3/4'''", "8 1/2'''", 'fraction-misread'],
  ['30', '80', 'digit-misread'],
  ['17', '11', 'digit-misread'],
  ['60', '66', 'digit-misread'],
  ['50', '60', 'digit-misread'],
  ['30', '40', 'other-digit'],
  ['755', '75', 'digit-doubled'],
  ['7', '77', 'digit-doubled'],
  ['0,18', '1,8', 'decimal-shifted'],
  ['0,18', '0,018', 'decimal-shifted'],
  ['480 mm', '48.0 mm', 'decimal-shifted'],
  ['48', '480', 'decimal-shifted'],
])('takes %s for %s by %s', (printed, meant, slip) => {
  expect(slipOf(printed, meant)).toBe(slip)
})

it('makes nothing of a print without figures', () => {
  expect(misreadings('lever').filter(({ slip }) => slip !== 'decimal-shifted')).toEqual([])
})

it('never offers the print itself among exchanged or misread digits', () => {
  for (const { printed, slip } of misreadings('77,70'))
    if (slip !== 'decimal-shifted') expect(printed).not.toBe('77,70')
})
