import { expect, test } from 'vitest'
import { gaugeWords } from '../../../core/springs/gauge-words.ts'

const told = (printed: string) => gaugeWords(printed).map(({ kind, text }) => `${kind} ${text}`)

test.each([
  ['Brandsma 12 × 2/0', ['word Brandsma', 'number 12', 'times ×', 'number 2/0']],
  ['Harrow gauge no. 8 strength 14', ['word Harrow', 'number 8', 'label strength', 'number 14']],
  ['Lehre Harrow, Stärke Nr. 5½', ['word Harrow', 'break ,', 'label Stärke', 'number 5 1/2']],
  ['12x14', ['number 12', 'times x', 'number 14']],
  ['12 by 12a', ['number 12', 'times by', 'number 12a']],
  ['', []],
])('%s is taken apart', (printed, pieces) => {
  expect(told(printed)).toEqual(pieces)
})

test.each(['12 mm', '12mm', '0.0047"', '12/100', '2 lig', "2'''"])(
  '%s is a size and no number of a gauge',
  (printed) => {
    expect(gaugeWords(printed).map(({ kind }) => kind)).toEqual(['size'])
  },
)
