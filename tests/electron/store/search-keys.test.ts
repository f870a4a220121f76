import Database from 'better-sqlite3'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { after, compact, folded, nameKey, orderKey, plain, wordsOf } from '../../../electron/store/search-keys.ts'

test.each([
  ['Größe', 'grosse'],
  ['GROSSE', 'grosse'],
  ['Échappement', 'echappement'],
  ['Œuvre Łódź Ørn Þór', 'oeuvre lodz orn thor'],
  ['１７½', '171⁄2'],
])('%s is plainly %s', (text, wanted) => {
  expect(plain(text)).toBe(wanted)
})

test('folding what is folded changes nothing, and neither case nor marks make another word', () => {
  // Left out: letters that writing large turns into others, as the dotless ı into I.
  const letters = fc.stringMatching(/^[a-zA-ZÀ-ÖØ-öø-žß0-9 .'-]{0,20}$/u).filter((text) => !/[ıŉ]/.test(text))
  fc.assert(
    fc.property(letters, (text) => {
      for (const key of [plain, folded, compact, nameKey]) {
        expect(key(key(text))).toBe(key(text))
        expect(key(text.toUpperCase())).toBe(key(text))
        expect(key(text.normalize('NFD'))).toBe(key(text))
      }
    }),
    { numRuns: 500 },
  )
})

test('words are made of letters and digits alone, whatever text they come from', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      for (const word of wordsOf(text)) expect(word).toMatch(/^[\p{L}\p{N}]+$/u)
      expect(wordsOf(folded(text))).toEqual(wordsOf(text))
      expect(compact(text)).toBe(wordsOf(text).join(''))
    }),
    { numRuns: 100 },
  )
})

test('gaps, points and strokes in a designation do not count in a search, but part names', () => {
  for (const text of ['17-220', '17 220', '17.220', '17/220']) expect(compact(text)).toBe('17220')
  expect(nameKey(' 17-220  B ')).toBe('17-220 b')
  expect(new Set(['17-220', '17 220', '17220'].map(nameKey)).size).toBe(3)
})

test('numbers within designations sort by what they count', () => {
  fc.assert(
    fc.property(fc.nat(99_999_999), fc.nat(99_999_999), fc.constantFrom('', 'B', ' bis'), (a, b, tail) => {
      expect(orderKey(`17-${a}${tail}`) < orderKey(`17-${b}${tail}`)).toBe(a < b)
    }),
  )
})

test('to SQLite every word that begins with a text stands before the text after it, and no other of the range does', () => {
  const connection = new Database(':memory:')
  const within = connection.prepare('select ? >= ? and ? < ?').pluck()
  const letters = fc.string({
    unit: fc.constantFrom('a', 'b', 'z', '0', '9', 'ß', 'é', '水', '𝔘', '\uffdc'),
    maxLength: 6,
  })
  fc.assert(
    fc.property(letters, letters, (prefix, word) => {
      expect(within.get(word, prefix, word, after(prefix)) === 1).toBe(word.startsWith(prefix))
    }),
    { numRuns: 500 },
  )
  connection.close()
})
