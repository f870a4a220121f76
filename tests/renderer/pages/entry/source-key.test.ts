import { expect, test } from 'vitest'
import { sourceKey } from '../../../../renderer/pages/entry/source-key.ts'

test('a source is known by its author and year', () => {
  expect(sourceKey({ title: 'Bench tables', author: 'A. Marlôw', year: '1931' }, [])).toBe('marlow-1931')
})
test('without an author it is known by its title', () => {
  expect(sourceKey({ title: 'Bench tables for repairers', author: '', year: '' }, [])).toBe('bench-tables')
})
test('no key is given twice', () => {
  expect(sourceKey({ title: '', author: 'Marlow', year: '1931' }, ['marlow-1931', 'marlow-1931-2'])).toBe(
    'marlow-1931-3',
  )
})
test('a title that has no letters still has a key', () => {
  expect(sourceKey({ title: '?', author: '', year: '' }, [])).toBe('source')
})
