import { expect, test } from 'vitest'
import {
  wordDifference,
  wordOrderDifferences,
  wordSourceDifferences,
  wordSpringDifferences,
} from '../../../core/wording/difference.ts'

test('a reading is said with its source, page and note, and of several which one counts', () => {
  const said = wordDifference({
    what: 'field',
    key: 'thirdWheel',
    before: [{ printed: '57', chosen: true }],
    after: [
      { printed: '57', source: 'hb', page: '44' },
      { printed: '75', note: 'counted', chosen: true },
      { printed: '' },
    ],
  })
  expect(said).toEqual({
    key: 'thirdWheel',
    label: 'Third wheel',
    before: ['57'],
    after: ['57 (hb p. 44)', '75, counted, the one that counts', 'left empty'],
  })
})

test('a line of a list is said by its columns, with what else it carries', () => {
  const line = { place: 'balance', kind: 'pallet-stone', count: 2, source: 'hb', note: '' }
  expect(wordDifference({ what: 'list', key: 'jewels', before: [], after: [line], moved: false })).toMatchObject({
    label: 'Jewels by place',
    after: ['balance, pallet stone, 2, source hb'],
  })
  expect(wordDifference({ what: 'list', key: 'jewels', before: [], after: [], moved: true })).toMatchObject({
    before: ['the same lines'],
    after: ['in another order'],
  })
})

test('what a newer version wrote is shown as it stands', () => {
  expect(wordDifference({ what: 'other', key: 'later', before: undefined, after: { deep: ['yes'] } })).toEqual({
    key: 'later',
    label: 'later',
    before: [],
    after: ['{"deep":["yes"]}'],
  })
})

test('a source is told field by field, its key and title first', () => {
  const source = { key: 'hb', title: 'Handbook', year: 1931, columns: ['maker', 'size'] }
  expect(wordSourceDifferences(null, source).map(({ label, after }) => [label, ...after])).toEqual([
    ['Key', 'hb'],
    ['Title', 'Handbook'],
    ['Year', '1931'],
    ['columns', 'maker, size'],
  ])
  expect(wordSourceDifferences(source, { ...source })).toEqual([])
})

test('an overrule is told with its proof, what it makes of the finding, and why', () => {
  const accepted = { proof: 'jewels-add-up', severity: 'accepted', reason: 'Two caps added.', of: 'disagrees' } as const
  expect(wordDifference({ what: 'overrule', key: 'jewels-add-up', before: undefined, after: accepted })).toEqual({
    key: 'jewels-add-up',
    label: 'Overrule of “Jewels add up”',
    before: [],
    after: ['accepted: Two caps added.'],
  })
})

test('a spring and a line to order are told figure by figure', () => {
  const spring = { supplierRef: 'A1', heightMm: 1.5, thicknessMm: 0.1, inStock: 3 }
  expect(wordSpringDifferences(spring, { ...spring, inStock: 2 })).toEqual([
    { key: 'inStock', label: 'In stock', before: ['3'], after: ['2'] },
  ])
  expect(wordSpringDifferences(spring, null).map(({ label }) => label)).toContain('Spring height')
  const line = { kind: 'part', what: 'click', quantity: 1, state: 'open', at: '2031' } as const
  const caliber = { maker: 'Verrin', designation: '17-220' }
  expect(wordOrderDifferences(line, { ...line, state: 'ordered', caliber })).toEqual([
    { key: 'caliber', label: 'Caliber', before: [], after: ['Verrin 17-220'] },
    { key: 'state', label: 'State', before: ['open'], after: ['ordered'] },
  ])
})
