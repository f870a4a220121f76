import { describe, expect, it } from 'vitest'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import { sizesAgree as proof } from '../../../core/proofs/sizes-agree.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'

const printed = (fields: Parameters<typeof caliberPrinted>[0]) => proof.judge(caliberPrinted(fields))
const sized = (values: CaliberValues) => proof.judge(caliberOf(values))

describe('one size in two measures', () => {
  it('agrees within the printed rounding, and shows the conversion', () => {
    expect(printed({ diameterMm: ["17'''", '38.35'] })).toMatchObject({
      outcome: 'agrees',
      reason: 'size-agrees',
      stated: expect.closeTo(38.3491, 4),
      found: 38.35,
      working: [
        { formula: '17 × 31250/13853', gives: expect.closeTo(38.349, 3) },
        { formula: '38.35 − 38.349', gives: expect.closeTo(0.0009, 4) },
        { formula: '0.282 + 0.005', gives: expect.closeTo(0.287, 4) },
      ],
    })
    expect(printed({ diameterMm: ['8 3/4 lig', '19,74'] })).toMatchObject({
      working: [{ formula: '8 3/4 × 31250/13853' }, {}, {}],
    })
    expect(printed({ diameterMm: ['1.72 in', '43.69'] })).toMatchObject({
      outcome: 'agrees',
      working: [{ formula: '1.72 × 25.4', gives: expect.closeTo(43.688, 9) }, {}, {}],
    })
  })

  it('doubts up to 1 % beyond, and objects to more', () => {
    expect(printed({ diameterMm: ["17'''", '38.7'] })).toMatchObject({
      outcome: 'doubtful',
      reason: 'size-units-differ',
    })
    expect(printed({ diameterMm: ["17'''", '39.0'] })).toMatchObject({
      outcome: 'disagrees',
      reason: 'size-units-differ',
      difference: expect.closeTo(0.6509, 4),
      allowed: expect.closeTo(0.332, 3),
    })
  })

  it('meets the edge of 1 % exactly, where binary numbers would miss it', () => {
    expect(sized({ shape: 'round', diameterMm: 30, widthMm: 30.3 })).toMatchObject({ outcome: 'doubtful' })
    expect(sized({ shape: 'round', diameterMm: 30, widthMm: 30.31 })).toMatchObject({ outcome: 'disagrees' })
  })

  it('meets the edge of the rounding: an eighth of a ligne and half of a hundredth', () => {
    // 17 lignes and an eighth are 38.6311 mm; figures that only touch the edge are two sizes.
    expect(printed({ diameterMm: ["17'''", '38.63'] })).toMatchObject({ outcome: 'agrees' })
    expect(printed({ diameterMm: ["17'''", '38.64'] })).toMatchObject({ outcome: 'doubtful' })
    expect(printed({ diameterMm: ['25.4 mm', '0.998 in'] })).toMatchObject({ outcome: 'agrees' })
    expect(printed({ diameterMm: ['25.40 mm', '0.9 in'] })).toMatchObject({ outcome: 'disagrees' })
  })

  it('holds every size to it, and the worst of several readings counts', () => {
    expect(printed({ lengthMm: ["11'''", '24.8', '26.0'], widthMm: '7.9' })).toMatchObject({
      outcome: 'disagrees',
      found: 26,
      fields: ['lengthMm', 'widthMm'],
    })
  })

  it('knows a size that is right in English lines', () => {
    expect(printed({ diameterMm: ["17'''", '36.0'] })).toMatchObject({
      details: { englishLinesMm: expect.closeTo(35.983, 3) },
    })
    const other = printed({ diameterMm: ["17'''", '37.0'] })
    expect('details' in other && other.details).not.toHaveProperty('englishLinesMm')
  })

  it('leaves readings in one measure to the proof of the sources', () => {
    const ids = proveCaliber(caliberPrinted({ diameterMm: ['38.0', '39.0'] })).map(({ proof: { id } }) => id)
    expect(ids).not.toContain('sizes-agree')
    expect(ids).toContain('sources-agree')
  })
})

describe('a round movement', () => {
  it('is as long and wide as its diameter', () => {
    expect(sized({ shape: 'round', diameterMm: 26, lengthMm: 26, widthMm: 26 })).toMatchObject({ outcome: 'agrees' })
    expect(sized({ shape: 'round', lengthMm: 26, widthMm: 26 })).toMatchObject({ outcome: 'agrees' })
    expect(printed({ shape: 'round', diameterMm: "11½'''", lengthMm: '25.9' })).toMatchObject({ outcome: 'agrees' })
    expect(sized({ shape: 'round', diameterMm: 26, widthMm: 26.2 })).toMatchObject({
      outcome: 'doubtful',
      reason: 'round-differs',
    })
    expect(sized({ shape: 'round', lengthMm: 26, widthMm: 18 })).toMatchObject({
      outcome: 'disagrees',
      reason: 'round-differs',
      fields: ['lengthMm', 'widthMm'],
    })
  })

  it('with its diameter alone leaves nothing to compare', () => {
    const ids = proveCaliber(caliberOf({ shape: 'round', diameterMm: 26 })).map(({ proof: { id } }) => id)
    expect(ids).not.toContain('sizes-agree')
  })
})

describe('a shaped movement', () => {
  it('is longer than wide, or square within the printed rounding', () => {
    expect(sized({ shape: 'oval', lengthMm: 19, widthMm: 13.5 })).toMatchObject({ outcome: 'agrees' })
    expect(sized({ shape: 'rectangular', lengthMm: 19, widthMm: 19 })).toMatchObject({ outcome: 'agrees' })
    expect(printed({ lengthMm: "8½'''", widthMm: '19.3' })).toMatchObject({ outcome: 'agrees' })
    expect(printed({ lengthMm: '19.0', widthMm: '19.1' })).toMatchObject({ outcome: 'doubtful' })
    expect(sized({ shape: 'oval', lengthMm: 13.5, widthMm: 19 })).toMatchObject({
      outcome: 'disagrees',
      reason: 'sides-exchanged',
    })
  })

  it('may have a diameter between width and length, and no other', () => {
    const sides = { shape: 'tonneau', lengthMm: 25.5, widthMm: 18.6 } as const
    for (const diameterMm of [18.6, 22, 25.5]) expect(sized({ ...sides, diameterMm }).outcome).toBe('agrees')
    for (const diameterMm of [18.5, 25.6])
      expect(sized({ ...sides, diameterMm })).toMatchObject({ outcome: 'doubtful', reason: 'diameter-beside-sides' })
  })

  it.each([
    ['25', '10', 'agrees'],
    ['24.9', '10', 'doubtful'],
    ['10,5', '4,2', 'agrees'],
    ['10,49', '4,2', 'doubtful'],
  ])(
    'of the shape of a baguette and %s by %s %s: two and a half times to the last digit',
    (lengthMm, widthMm, outcome) => {
      expect(printed({ shape: 'baguette', lengthMm, widthMm })).toMatchObject({ outcome })
      expect(printed({ shape: 'rectangular', lengthMm, widthMm })).toMatchObject({ outcome: 'agrees' })
    },
  )
})

describe('what is missing', () => {
  it.each<[CaliberValues, string]>([
    [{ lengthMm: 20 }, 'widthMm'],
    [{ widthMm: 20 }, 'lengthMm'],
    [{ shape: 'oval', lengthMm: 20, diameterMm: 18 }, 'widthMm'],
    [{ shape: 'round', lengthMm: 20 }, 'diameterMm'],
  ])('%o cannot be checked without %s', (values, key) => {
    expect(sized(values)).toEqual({ outcome: 'cannot-check', missing: [key] })
  })
})

describe('what is said of it, in full', () => {
  it('names both sizes as printed, what lies between them and what rounding bears', () => {
    const sizes = { shape: 'tonneau', diameterMm: '26.0', lengthMm: '25.5', widthMm: '18.6' }
    expect(printed(sizes)).toEqual({
      outcome: 'doubtful',
      stated: 26,
      found: 25.5,
      unit: 'mm',
      difference: -0.5,
      allowed: null,
      working: [
        {
          formula: '18.6 − 25.5',
          where: { field: 'lengthMm', other: 'widthMm', first: '25.5', second: '18.6' },
          gives: -6.9,
        },
        { formula: '0.05 + 0.05', where: { rounding: 'half of the last digit of each' }, gives: 0.1 },
        {
          formula: '25.5 − 26',
          where: { field: 'diameterMm', other: 'lengthMm', first: '26.0', second: '25.5' },
          gives: -0.5,
        },
      ],
      reason: 'diameter-beside-sides',
      details: {
        field: 'diameterMm',
        other: 'lengthMm',
        first: '26.0',
        second: '25.5',
        ratio: expect.closeTo(1.371, 3),
        baguetteUsual: 3,
      },
      fields: ['lengthMm', 'widthMm', 'diameterMm'],
    })
    expect(printed({ ...sizes, diameterMm: '20.0' })).toMatchObject({
      outcome: 'agrees',
      reason: 'size-agrees',
      allowed: null,
    })
  })

  it('tells which size of a round movement differs, and by how much it may', () => {
    expect(printed({ shape: 'round', diameterMm: '26.0', lengthMm: '26.2' })).toMatchObject({
      outcome: 'doubtful',
      reason: 'round-differs',
      difference: 0.2,
      allowed: 0.1,
      details: { field: 'diameterMm', other: 'lengthMm' },
    })
    expect(printed({ shape: 'round', diameterMm: '26.0', widthMm: '26.2' })).toMatchObject({
      details: { field: 'diameterMm', other: 'widthMm' },
    })
  })

  it('works from douzièmes and decimal lignes as they are written', () => {
    const first = (size: string, mm: string) => {
      const judgement = printed({ diameterMm: [size, mm] })
      return 'working' in judgement ? judgement.working[0] : undefined
    }
    expect(first('204 dz', '38.35')).toMatchObject({
      formula: '17 × 31250/13853',
      where: { field: 'diameterMm', printed: '204 dz' },
    })
    expect(first('205 dz', '38.54')).toMatchObject({ formula: '17 1/12 × 31250/13853' })
    expect(first("17.35'''", '39.14')).toMatchObject({ formula: '17.35 × 31250/13853' })
  })

  it('writes no line of rounding where nothing was rounded', () => {
    expect(sized({ shape: 'oval', lengthMm: 19, widthMm: 13.5 })).toMatchObject({
      working: [{ formula: '13.5 − 19', gives: -5.5 }],
    })
  })

  it('takes the first of two that are equally doubtful', () => {
    expect(printed({ shape: 'baguette', lengthMm: ['20.00', '0.792 in'], widthMm: '9.0' })).toMatchObject({
      outcome: 'doubtful',
      reason: 'size-units-differ',
    })
    expect(printed({ shape: 'baguette', lengthMm: '18.0', widthMm: '8.0' })).toMatchObject({
      reason: 'baguette-short',
    })
  })
})

it('knows English lines from either side and to the sum of both roundings, and only of one size in two measures', () => {
  // 17 English lines are 35.983 mm; an eighth of a ligne and half of a tenth of a millimetre are 0.332.
  expect(printed({ diameterMm: ['36.3', "17'''"] })).toHaveProperty('details.englishLinesMm')
  expect(printed({ diameterMm: ["17'''", '36.4'] })).not.toHaveProperty('details.englishLinesMm')
  expect(printed({ shape: 'round', diameterMm: "17'''", widthMm: '36.0' })).not.toHaveProperty('details.englishLinesMm')
  expect(printed({ diameterMm: ['25.4 mm', '0.9 in'] })).not.toHaveProperty('details.englishLinesMm')
})

it('holds two and a half times exactly for a baguette printed in lignes', () => {
  expect(printed({ shape: 'baguette', lengthMm: "10'''", widthMm: "4'''" })).toMatchObject({ outcome: 'agrees' })
})

it('applies where a side is stated, or one size in two measures', () => {
  const applies = (fields: Parameters<typeof caliberPrinted>[0]) => {
    const { values, readings } = caliberPrinted(fields)
    return proof.appliesTo?.(values, readings)
  }
  expect(applies({ lengthMm: '20' })).toBe(true)
  expect(applies({ widthMm: '20' })).toBe(true)
  expect(applies({ diameterMm: ["17'''", '38.35'] })).toBe(true)
  expect(applies({ diameterMm: '38.35' })).toBe(false)
})
