import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fileCaliberSchema } from '../../../core/exchange/library-file.ts'
import { blankEntry, openCaliber } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { arbitraryFileCaliber } from '../../support/arbitrary-library.ts'

const entry = (fields: Record<string, { printed: string; chosen?: boolean; source?: string }[]>, more = {}) => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation: '17-220',
  fields,
  ...more,
})

describe('an entry is read into values', () => {
  test('maker and designation stand among the values', () => {
    expect(readEntry(entry({})).caliber.values).toEqual({ maker: 'Verrin', designation: '17-220' })
    expect(readEntry(blankEntry()).problems.map(({ field }) => field)).toEqual(['maker', 'designation'])
  })

  test('where several readings stand and none is chosen, the first is', () => {
    const { caliber } = readEntry(entry({ springLengthMm: [{ printed: '480' }, { printed: '500' }] }))
    expect(caliber.values.springLengthMm).toBe(480)
    expect(caliber.readings.springLengthMm?.map(({ chosen }) => chosen)).toEqual([true, false])
  })

  test('the chosen reading gives the value', () => {
    const { caliber } = readEntry(entry({ springLengthMm: [{ printed: '480' }, { printed: '500', chosen: true }] }))
    expect(caliber.values.springLengthMm).toBe(500)
  })

  test('a value that cannot be read is named with its place, and nothing is put in its stead', () => {
    const { caliber, problems } = readEntry(entry({ springThicknessMm: [{ printed: '1,234' }, { printed: '0.18' }] }))
    expect(problems).toMatchObject([{ field: 'springThicknessMm', index: 0, problem: { code: 'ambiguous' } }])
    expect(caliber.values.springThicknessMm).toBeUndefined()
    expect(caliber.readings.springThicknessMm).toHaveLength(1)
  })

  test('blank readings and blank lines are passed over', () => {
    expect(readEntry(entry({ heightMm: [{ printed: ' ' }] }, { jewels: [{ place: '', count: '' }] })).problems).toEqual(
      [],
    )
  })

  test('unknown fields are listed and unusual values remarked on', () => {
    const read = readEntry(
      entry({ magneticShieldMm: [{ printed: '1' }], escapeTeeth: [{ printed: '12' }] }, { future: 1 }),
    )
    expect(read.unknownKeys).toEqual(['future', 'magneticShieldMm'])
    expect(read.remarks).toMatchObject([{ field: 'escapeTeeth', index: 0, remark: { code: 'unusual' } }])
  })

  test('list lines are read by their columns and problems name line and cell', () => {
    const { caliber, problems } = readEntry(
      entry(
        {},
        {
          jewels: [
            { place: 'balance', kind: 'pallet stone', count: 2, xNew: true },
            { place: 'roof', kind: 'hole', count: '2.5' },
          ],
          depths: [{ driver: 'third wheel', driven: 'fourth pinion', centreDistanceMm: '3,25' }],
          stripOrder: [
            { part: 'balance cock', after: ['power let down'] },
            { part: '', caution: 'slowly' },
          ],
        },
      ),
    )
    expect(caliber.lists.jewels).toEqual([{ place: 'balance', kind: 'pallet-stone', count: 2 }])
    expect(caliber.lists.depths).toMatchObject([
      {
        driver: 'third wheel',
        driven: 'fourth pinion',
        centreDistanceMm: 3.25,
        quantities: { centreDistanceMm: { value: 3.25, unit: 'mm', halfStep: 0.005 } },
      },
    ])
    expect(caliber.lists.stripOrder).toEqual([{ part: 'balance cock', after: ['power let down'] }])
    expect(problems.map(({ field, index, column, problem }) => [field, index, column, problem.code])).toEqual([
      ['jewels', 1, 'place', 'not-a-choice'],
      ['jewels', 1, 'count', 'not-whole'],
      ['stripOrder', 1, 'part', 'missing-cell'],
    ])
  })

  test('no file makes it throw', () => {
    fc.assert(
      fc.property(arbitraryFileCaliber, (document) => {
        expect(readEntry(openCaliber(fileCaliberSchema.parse(document))).caliber.lists.jewels.length).toBeLessThan(3)
      }),
    )
  })
})
