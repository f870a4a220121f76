import { expect, test } from 'vitest'
import { cellKey, type PlayCellName, readPlayRow } from '../../../../renderer/pages/play/read-play-row.ts'

const row = (texts: Partial<Record<PlayCellName, string>>, name: 'end' | 'upper' = 'upper', offMm?: number) =>
  readPlayRow(
    Object.fromEntries(
      (Object.keys(texts) as PlayCellName[]).map((cell) => [cellKey('third', name, cell), texts[cell] ?? '']),
    ),
    { movement: 'watch', place: 'third', name, offMm },
  )

test('a play typed as such is judged', () => {
  expect(row({ play: '0.04' }, 'end').finding?.verdict).toBe('within')
  expect(row({ play: '0.018' }).finding?.verdict).toBe('within')
})

test('a hole with its pivot goes before a play typed as such', () => {
  const read = row({ hole: '0.128', pivot: '0.110', play: '0.5' })
  expect(read.measured).toEqual({ value: 0.018, low: 0.017, high: 0.019 })
  expect(read.finding?.verdict).toBe('within')
})

test('the instrument’s error counts in both sizes', () => {
  expect(row({ hole: '0.128', pivot: '0.110' }, 'upper', 0.002).measured).toEqual({
    value: 0.018,
    low: 0.014,
    high: 0.022,
  })
})

test('a pivot larger than its hole is refused, and nothing is judged', () => {
  const read = row({ hole: '0.11', pivot: '0.12' })
  expect(read.refused).toBe('A pivot of 0.12 mm does not go into a hole of 0.11 mm. Measure both again.')
  expect(read.finding).toBeUndefined()
})

test('one size alone asks for the other, until the play itself is typed', () => {
  expect(row({ hole: '0.12' }).wanted).toBe('Type the pivot too, or the side-shake itself.')
  expect(row({ pivot: '0.12' }).wanted).toBe('Type the hole too, or the side-shake itself.')
  expect(row({ hole: '0.12', play: '0.018' }).wanted).toBe('')
  expect(row({ hole: '0.12', pivot: 'x' }).wanted).toBe('')
  expect(row({}).wanted).toBe('')
})

test('the maker’s figure takes the place of what is in print', () => {
  const read = row({ play: '0.060', maker: '0.05…0.07' }, 'end')
  expect(read.standard).toEqual({ by: 'maker', limits: { low: 0.05, high: 0.07 } })
  expect(read.finding?.verdict).toBe('within')
})
