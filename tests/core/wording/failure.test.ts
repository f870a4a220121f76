import { expect, test } from 'vitest'
import { failureSchema } from '../../../core/api/errors.ts'
import { wordFailure } from '../../../core/wording/failure.ts'

test('every failure has a sentence, with details or without, in the words of the trade', () => {
  for (const code of failureSchema.shape.code.options) {
    for (const details of [{}, { file: 'watch.sqlite', where: 'here', what: 'this', name: 'x', problems: ['That.'] }]) {
      const sentence = wordFailure({ code, details })
      expect(sentence).toMatch(/^[A-Za-z].*\.$/)
      expect(sentence).not.toMatch(/undefined|database|SQL\b|\.\.|error/i)
    }
  }
})

test('a file that cannot be read is named with the place and the fault', () => {
  const details = { file: 'a.json', where: 'calibers[3].maker', what: 'this is missing; fill it in' }
  expect(wordFailure({ code: 'file-not-readable', details })).toBe(
    'a.json cannot be read, at calibers[3].maker: this is missing; fill it in.',
  )
})

test('several unreadable values are all said', () => {
  const details = { problems: ['Third wheel: not whole.', 'Diameter: unclear.'] }
  expect(wordFailure({ code: 'unreadable-values', details })).toBe(
    'Not saved: Third wheel: not whole. Diameter: unclear.',
  )
})
