import { expect, test } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { withCounts } from '../../../core/record/with-counts.ts'

const printed = { printed: '57', source: 'hb1', page: '44', chosen: true }
const entry = { ...blankEntry(), maker: 'Verrin', designation: '1', fields: { thirdWheel: [printed] } }

test('a count that was worked out is chosen, and what was printed stays', () => {
  const then = withCounts(entry, { thirdWheel: 75, fourthPinion: 10 }, 'worked out')
  expect(then.fields.thirdWheel).toEqual([
    { printed: '57', source: 'hb1', page: '44' },
    { printed: '75', note: 'worked out', chosen: true },
  ])
  expect(readEntry(then).caliber.values).toMatchObject({ thirdWheel: 75, fourthPinion: 10 })
  expect(entry.fields.thirdWheel).toEqual([printed])
})

test('a count that a reading prints is chosen there', () => {
  const two = { ...entry, fields: { thirdWheel: [printed, { printed: '75', source: 'hb2' }] } }
  expect(withCounts(two, { thirdWheel: 75 }, 'worked out').fields.thirdWheel).toEqual([
    { printed: '57', source: 'hb1', page: '44' },
    { printed: '75', source: 'hb2', chosen: true },
  ])
})

test('a reading kept ready and never typed gives way', () => {
  const blank = { ...entry, fields: { thirdWheel: [{ printed: '' }] } }
  expect(withCounts(blank, { thirdWheel: 75 }, 'worked out').fields.thirdWheel).toHaveLength(1)
})
