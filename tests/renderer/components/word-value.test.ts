import { expect, test } from 'vitest'
import { wordValue } from '../../../renderer/components/word-value.ts'

test('a length stands as figure and unit apart', () => {
  expect(wordValue('springThicknessMm', 0.18)).toEqual({ text: '0.18', unit: 'mm' })
})

test('a rate has its thousands apart and its unit', () => {
  expect(wordValue('beatRateVph', 18000)).toEqual({ text: '18\u202f000', unit: 'vph' })
})

test('a choice is said as its table says it', () => {
  expect(wordValue('springEnd', 't-end')).toEqual({ text: 'T-end', unit: '' })
})

test('other names stand with commas between', () => {
  expect(wordValue('alsoKnownAs', ['A 1', 'A 2'])).toEqual({ text: 'A 1, A 2', unit: '' })
})
