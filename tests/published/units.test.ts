import { spawnSync } from 'node:child_process'
import { describe, expect, test } from 'vitest'
import { readLength } from '../../core/quantities/read-length.ts'

const mm = (text: string): number => {
  const read = readLength(text)
  return read.ok ? read.quantity.value : Number.NaN
}

/**
 * Lignes, millimetres to two decimals and inches, computed from the law of 10 December 1799 (443.296 lignes to the
 * metre) as GNU units 2.22 quotes it: research/trains.md, section 7, grade A.
 */
const table: readonly (readonly [string, string, string])[] = [
  ['3 3/4', '8.46', '0.3330'],
  ['4 1/4', '9.59', '0.3775'],
  ['5', '11.28', '0.4441'],
  ['5 1/2', '12.41', '0.4885'],
  ['6 3/4', '15.23', '0.5995'],
  ['7 3/4', '17.48', '0.6883'],
  ['8', '18.05', '0.7105'],
  ['8 3/4', '19.74', '0.7771'],
  ['9 3/4', '21.99', '0.8659'],
  ['10', '22.56', '0.8881'],
  ['10 1/2', '23.69', '0.9325'],
  ['11', '24.81', '0.9769'],
  ['11 1/2', '25.94', '1.0213'],
  ['12', '27.07', '1.0657'],
  ['12 1/2', '28.20', '1.1102'],
  ['13', '29.33', '1.1546'],
  ['13 1/4', '29.89', '1.1768'],
  ['15', '33.84', '1.3322'],
  ['16', '36.09', '1.4210'],
  ['16 1/2', '37.22', '1.4654'],
  ['17', '38.35', '1.5098'],
  ['18', '40.60', '1.5986'],
  ['18 1/2', '41.73', '1.6430'],
  ['19', '42.86', '1.6874'],
  ['20', '45.12', '1.7762'],
  ['21', '47.37', '1.8651'],
]

describe('sizes in lignes agree with the table of research/trains.md section 7', () => {
  test.each(table)("%s''' is %s mm and %s in", (lignes, millimetres, inches) => {
    expect(mm(`${lignes}'''`).toFixed(2)).toBe(millimetres)
    expect((mm(`${lignes}'''`) / 25.4).toFixed(4)).toBe(inches)
  })

  test('443.296 lignes are one metre, and twelve douzièmes one ligne', () => {
    expect(mm("443.296'''")).toBe(1000)
    expect(mm('12 dz')).toBe(mm("1'''"))
  })

  test('the English line and the rounded ligne of 2.26 mm are other lengths', () => {
    expect(readLength('19 lines').ok).toBe(false)
    expect(Math.abs(19 * 2.26 - mm("19'''"))).toBeGreaterThan(0.07)
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
  ])('%s equals %s', (printed, asked) => {
    expect(mm(printed)).toBeCloseTo(Number(units(asked)), 9)
  })
})
