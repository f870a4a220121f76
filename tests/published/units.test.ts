import { spawnSync } from 'node:child_process'
import { describe, expect, test } from 'vitest'
import { readLength } from '../../core/quantities/read-length.ts'
import { expectAsPrinted, expectNotAsPrinted, printed } from '../support/printed.ts'

const mm = (text: string): number => {
  const read = readLength(text)
  return read.ok ? read.quantity.value : Number.NaN
}

/*
 * Everything here follows from the law of 10 December 1799 (443.296 lignes to the metre) as GNU units 2.22 quotes it in
 * definitions.units, read there: grade A.
 */
const table: readonly (readonly [lignes: string, douziemes: string, mm4: string, mm2: string, inches: string])[] = [
  ['3 3/4', '45', '8.4594', '8.46', '0.3330'],
  ['4 1/4', '51', '9.5873', '9.59', '0.3775'],
  ['5', '60', '11.2791', '11.28', '0.4441'],
  ['5 1/2', '66', '12.4071', '12.41', '0.4885'],
  ['6 3/4', '81', '15.2268', '15.23', '0.5995'],
  ['7 3/4', '93', '17.4827', '17.48', '0.6883'],
  ['8', '96', '18.0466', '18.05', '0.7105'],
  ['8 3/4', '105', '19.7385', '19.74', '0.7771'],
  ['9 3/4', '117', '21.9943', '21.99', '0.8659'],
  ['10', '120', '22.5583', '22.56', '0.8881'],
  ['10 1/2', '126', '23.6862', '23.69', '0.9325'],
  ['11', '132', '24.8141', '24.81', '0.9769'],
  ['11 1/2', '138', '25.9420', '25.94', '1.0213'],
  ['12', '144', '27.0699', '27.07', '1.0657'],
  ['12 1/2', '150', '28.1979', '28.20', '1.1102'],
  ['13', '156', '29.3258', '29.33', '1.1546'],
  ['13 1/4', '159', '29.8897', '29.89', '1.1768'],
  ['15', '180', '33.8374', '33.84', '1.3322'],
  ['16', '192', '36.0933', '36.09', '1.4210'],
  ['16 1/2', '198', '37.2212', '37.22', '1.4654'],
  ['17', '204', '38.3491', '38.35', '1.5098'],
  ['18', '216', '40.6049', '40.60', '1.5986'],
  ['18 1/2', '222', '41.7328', '41.73', '1.6430'],
  ['19', '228', '42.8608', '42.86', '1.6874'],
  ['20', '240', '45.1166', '45.12', '1.7762'],
  ['21', '252', '47.3724', '47.37', '1.8651'],
]

describe('sizes in lignes', () => {
  test.each(table)("%s''', %s douzièmes, are %s or %s mm and %s in", (lignes, douziemes, mm4, mm2, inches) => {
    expectAsPrinted(mm(`${lignes}'''`), mm4)
    expectAsPrinted(mm(`${lignes}'''`), mm2)
    expectAsPrinted(mm(`${lignes}'''`) / 25.4, inches)
    expect(mm(`${douziemes} dz`)).toBe(mm(`${lignes}'''`))
    expectAsPrinted(mm(`${inches} in`) / 25.4, inches)
  })

  test.each([
    ['a pied', 144, '324.83938', '12.78895'],
    ['a pouce', 12, '27.069949', '1.0657460'],
    ['a ligne', 1, '2.2558291', '0.08881217'],
    ['a douzième', 1 / 12, '0.18798576', '0.00740101'],
  ])('%s of %d lignes is %s mm and %s in', (_name, lignes, millimetres, inches) => {
    expectAsPrinted(lignes * mm("1'''"), millimetres)
    expectAsPrinted((lignes * mm("1'''")) / 25.4, inches)
  })

  test('a millimetre is 0.443296 ligne and 5.319552 douzièmes, an inch 11.2597184 lignes', () => {
    expectAsPrinted(1 / mm("1'''"), '0.443296')
    expectAsPrinted(1 / mm('1 dz'), '5.319552')
    expectAsPrinted(25.4 / mm("1'''"), '11.2597184')
    expect(mm("443.296'''")).toBe(1000)
    expect(mm('12 dz')).toBe(mm("1'''"))
  })

  test.each([
    ['2.2558', 'research/mainsprings.md, section 6.1; P'],
    ['2.25583', 'tables, the same section; P'],
    ['2.26', 'for mental work, the same section; P'],
  ])('a ligne is printed as %s mm (%s)', (text) => {
    expectAsPrinted(mm("1'''"), text)
  })

  test('a douzième is printed as 0.188 and is 0.187986 mm (research/mainsprings.md, section 6.1; P; arithmetic: D)', () => {
    expectAsPrinted(mm('1 dz'), '0.188')
    expectAsPrinted(mm('1 dz'), '0.187986')
    expectAsPrinted(12 * mm("1'''"), '27.07')
  })
})

describe('lengths that are not the ligne', () => {
  test('the English line of 2.116667 mm and the button line of 0.635 mm are neither; “lines” are refused', () => {
    expect(readLength('19 lines').ok).toBe(false)
    expectAsPrinted(25.4 / 12, '2.116667')
    expectNotAsPrinted(mm("1'''"), '2.116667')
    expectAsPrinted(25.4 / 40, '0.635')
    expectNotAsPrinted(mm("1'''"), '0.635')
  })

  test('the ligne of 2.26 mm shifts 19 by 0.08 mm; 2.256 is safe to a hundredth up to 21', () => {
    expectAsPrinted(19 * printed('2.26') - mm("19'''"), '0.08')
    expect(21 * printed('2.256') - mm("21'''")).toBeLessThan(0.01)
  })
})

describe('lengths agree with GNU units (Debian package units, 2.22)', () => {
  const units = (from: string): string =>
    spawnSync('units', ['-t', '-o', '%.12g', from, 'mm'], { encoding: 'utf8' }).stdout
  const installed = spawnSync('units', ['--version']).status === 0
  if (!installed)
    console.log('GNU units is not installed here, so this comparison was skipped (apt-get install units).')

  test.skipIf(!installed).each([
    ["17'''", '17 frenchline'],
    ["8 3/4'''", '8.75 frenchline'],
    ['5 dz', '5 frenchpoint'],
    ['0.0071 in', '0.0071 inch'],
    ['180 µm', '180 micrometer'],
  ])('%s equals %s', (text, asked) => {
    expect(mm(text)).toBeCloseTo(Number(units(asked)), 9)
  })
})
