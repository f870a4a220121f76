import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { turnsText } from '../../../renderer/drawings/turns-text.ts'

test.each([
  [new Fraction(60), '60 turns/h'],
  [new Fraction(1), '1 turn/h'],
  [new Fraction(1, 6), '1 turn in 6 h'],
  [new Fraction(2, 13), '1 turn in 6½ h'],
  [new Fraction(15, 2), '7½ turns/h'],
  [new Fraction(1000, 97), '10.31 turns/h'],
  [null, 'turns not known'],
])('%s is said in full', (turns, text) => {
  expect(turnsText(turns)).toBe(text)
})
