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

it.each([
  ['91', '19', 'digits-exchanged'],
  ['99', '9', 'digit-doubled'],
  ['75', '755', 'digit-doubled'],
  ['0,5', '5', 'decimal-shifted'],
  ['.5', '0.05', 'decimal-shifted'],
  ['10,05', '100,5', 'decimal-shifted'],
  ['c. 0,18', 'c. 1,8', 'decimal-shifted'],
])('takes %s for %s by %s, wherever the figure stands', (printed, meant, slip) => {
  expect(slipOf(printed, meant)).toBe(slip)
})

it('takes two digits for each other either way: what is made alike is alike', () => {
  for (const one of '0123456789')
    for (const other of '0123456789') if (one !== other) expect(slipOf(one, other)).toBe(slipOf(other, one))
})

it('moves no decimal mark where the print holds two figures or a fraction', () => {
  for (const printed of ['18 000', '8 3/4', '1.20 ±0.01'])
    expect(misreadings(printed).map(({ slip }) => slip)).not.toContain('decimal-shifted')
})

it('leaves a figure standing: a single digit is not doubled away', () => {
  for (const printed of ['7', "9'''"]) expect(misreadings(printed).every((one) => /\d/.test(one.printed))).toBe(true)
})
