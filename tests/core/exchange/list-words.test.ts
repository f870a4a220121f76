import { expect, test } from 'vitest'
import { wordReader } from '../../../core/exchange/list-words.ts'

test('a word is read once for all its rows, whatever its capitals and gaps', () => {
  const { read, words } = wordReader({})
  expect(read('end', 'Loch', 2)).toBe('hole')
  expect(read('end', 'LOCH', 3)).toBe('hole')
  expect(read('end', ' loch', 4)).toBe('hole')
  expect(words()).toEqual([{ kind: 'end', key: 'loch', printed: 'Loch', meaning: 'hole', rows: 3, firstRow: 2 }])
})

test('a word that is not known stays as printed, and is told apart from the same word of another column', () => {
  const { read, words } = wordReader({})
  expect(read('end', 'Stahl', 5)).toBe('Stahl')
  expect(read('material', 'Stahl', 5)).toBe('carbon-steel')
  expect(words().map(({ kind, meaning }) => [kind, meaning])).toEqual([
    ['end', null],
    ['material', 'carbon-steel'],
  ])
})

test('what its reader says of a word goes before what is known, and may be nothing', () => {
  const { read, words } = wordReader({ end: { loch: 'loop', '?': '' } })
  expect(read('end', 'Loch', 2)).toBe('loop')
  expect(read('end', '?', 3)).toBe('')
  expect(words().map(({ meaning }) => meaning)).toEqual(['loop', ''])
})
