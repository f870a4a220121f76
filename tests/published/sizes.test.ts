import { describe, expect, it } from 'vitest'
import { sizesAgree } from '../../core/proofs/sizes-agree.ts'
import { caliberPrinted } from '../support/caliber-printed.ts'

/*
 * Sizes in lignes beside millimetres to two decimals, and inches: research/trains.md, section 7, computed from the law of
 * 10 December 1799 (443.296 lignes to the metre) as GNU units 2.22 quotes it; grade A.
 */
const table: readonly (readonly [lignes: string, mm: string, inches: string])[] = [
  ['3 3/4', '8.46', '0.3330'],
  ['5 1/2', '12.41', '0.4885'],
  ['8 3/4', '19.74', '0.7771'],
  ['10 1/2', '23.69', '0.9325'],
  ['11 1/2', '25.94', '1.0213'],
  ['13', '29.33', '1.1546'],
  ['17', '38.35', '1.5098'],
  ['19', '42.86', '1.6874'],
  ['21', '47.37', '1.8651'],
]

const judged = (...diameterMm: readonly string[]) => sizesAgree.judge(caliberPrinted({ diameterMm }))

describe('sizes as handbooks print them', () => {
  it.each(table)("%s''', %s mm and %s in are one size", (lignes, mm, inches) => {
    expect(judged(`${lignes}'''`, mm, `${inches} in`)).toMatchObject({ outcome: 'agrees' })
  })

  it.each(table)("%s''' is not read as the English line of 2.1167 mm (grade A)", (lignes, mm) => {
    const whole = lignes.split(' ').reduce((sum, part) => {
      const [above = '', below = '1'] = part.split('/')
      return sum + Number(above) / Number(below)
    }, 0)
    expect(judged(`${lignes}'''`, (whole * 2.116667).toFixed(2)).outcome).toBe('disagrees')
    expect(judged(`${lignes}'''`, mm).outcome).toBe('agrees')
  })

  it("the rounded ligne of 2.26 mm puts 19''' off by 0.08 mm, which the print of a whole ligne still explains (grade A)", () => {
    expect(judged("19'''", '42.94').outcome).toBe('agrees')
    expect(judged("19.00'''", '42.94').outcome).toBe('doubtful')
  })
})
