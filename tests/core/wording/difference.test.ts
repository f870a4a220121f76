import { expect, test } from 'vitest'
import { wordDifference, wordSourceDifferences } from '../../../core/wording/difference.ts'

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
