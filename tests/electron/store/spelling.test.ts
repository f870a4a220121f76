import fc from 'fast-check'
import { expect, test } from 'vitest'
import { deletionsOf, editsBetween, isSpelt, slipsIn } from '../../../electron/store/spelling.ts'

/** The distance by its definition, without a table: the best of every last edit. Two neighbours exchanged are left so. */
const editsByDefinition = (a: string, b: string): number => {
  if (a === '' || b === '') return a.length + b.length
  const [restA, restB] = [a.slice(0, -1), b.slice(0, -1)]
  const [lastA, lastB] = [a.slice(-1), b.slice(-1)]
  const ways = [
    editsByDefinition(restA, b) + 1,
    editsByDefinition(a, restB) + 1,
    editsByDefinition(restA, restB) + (lastA === lastB ? 0 : 1),
  ]
  if (a.length > 1 && b.length > 1 && lastA === restB.slice(-1) && restA.slice(-1) === lastB)
    ways.push(editsByDefinition(restA.slice(0, -1), restB.slice(0, -1)) + 1)
  return Math.min(...ways)
}

/** Every text that one edit makes of a word, with letters of a short alphabet. */
const oneEditFrom = (word: string): Set<string> => {
  const made = new Set<string>()
  for (let at = 0; at <= word.length; at += 1) {
    const [left, right] = [word.slice(0, at), word.slice(at)]
    for (const letter of 'abc') made.add(left + letter + right).add(left + letter + right.slice(1))
    made.add(left + right.slice(1)).add(left + right.slice(1, 2) + right.slice(0, 1) + right.slice(2))
  }
  return made
}

const short = fc.stringMatching(/^[abc]{0,5}$/)

test('the edits between two words are as few as the definition of the distance says', () => {
  fc.assert(
    fc.property(short, short, (a, b) => {
      expect(editsBetween(a, b)).toBe(editsByDefinition(a, b))
    }),
    { numRuns: 400 },
  )
})

test('two words are one edit apart or less exactly where one edit makes the one of the other', () => {
  fc.assert(
    fc.property(short, short, (a, b) => {
      expect(editsBetween(a, b) <= 1).toBe(a === b || oneEditFrom(a).has(b))
    }),
    { numRuns: 400 },
  )
})

test('the edits are the same both ways, none only between equal words, and never more than the longer word has letters', () => {
  const word = fc.stringMatching(/^[a-fà-ö]{0,12}$/u)
  fc.assert(
    fc.property(word, word, (a, b) => {
      const edits = editsBetween(a, b)
      expect(editsBetween(b, a)).toBe(edits)
      expect(edits === 0).toBe(a === b)
      expect(edits).toBeGreaterThanOrEqual(Math.abs(a.length - b.length))
      expect(edits).toBeLessThanOrEqual(Math.max(a.length, b.length))
    }),
  )
})

// kitten and sitting, ca and abc: the textbook pairs of the edit distance and of its form in which what was exchanged is
// left so (the Damerau distance proper gives 2 for the second); both from memory.
test.each([
  ['kitten', 'sitting', 3],
  ['ca', 'abc', 3],
  ['repassage', 'repasasge', 1],
  ['', 'abc', 3],
])('%s and %s are %i edits apart', (a, b, edits) => {
  expect(editsBetween(a, b)).toBe(edits)
})

test.each([
  ['ver', 0],
  ['lune', 1],
  ['verrins', 1],
  ['repassag', 2],
])('%s may have %i slips', (word, slips) => {
  expect(slipsIn(word)).toBe(slips)
})

test('numbers, short words and endless ones are not spelt', () => {
  const asked = ['lune', 'größe', 'ver', '17220', 'kr4821', 'a b c d', 'a'.repeat(41)]
  expect(asked.filter(isSpelt)).toEqual(['lune', 'größe'])
})

/** One slip of the hand at a place in a word. */
const slipped = (word: string, [place, kind, letter]: Slip): string => {
  const i = place % (word.length - 1)
  return {
    'leave-out': word.slice(0, i) + word.slice(i + 1),
    'put-in': word.slice(0, i) + letter + word.slice(i),
    change: word.slice(0, i) + letter + word.slice(i + 1),
    exchange: word.slice(0, i) + (word[i + 1] ?? '') + (word[i] ?? '') + word.slice(i + 2),
  }[kind]
}
type Slip = [number, 'leave-out' | 'put-in' | 'change' | 'exchange', string]
const slip: fc.Arbitrary<Slip> = fc.tuple(
  fc.nat(),
  fc.constantFrom('leave-out', 'put-in', 'change', 'exchange'),
  fc.stringMatching(/^[a-z]$/),
)

test('a word with as many slips in it as it may have shares letters left with the word that was meant', () => {
  const word = fc.stringMatching(/^[a-z]{4,14}$/)
  fc.assert(
    fc.property(word, fc.array(slip, { minLength: 1, maxLength: 2 }), (meant, slips) => {
      const typed = slips.reduce(slipped, meant)
      const longer = typed.length > meant.length ? typed : meant
      if (!isSpelt(typed) || editsBetween(typed, meant) > slipsIn(longer)) return
      expect(editsBetween(typed, meant)).toBeLessThanOrEqual(slips.length)
      const left = new Set(deletionsOf(meant))
      expect(deletionsOf(typed).some((each) => left.has(each))).toBe(true)
    }),
    { numRuns: 600 },
  )
})
