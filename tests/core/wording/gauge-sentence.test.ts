import { expect, test } from 'vitest'
import type { GaugeDoubt } from '../../../core/springs/read-gauge.ts'
import { gaugeDoubt, gaugeSentence } from '../../../core/wording/gauge-sentence.ts'
import { gaugeTableOf } from '../../support/gauge-table-of.ts'

const table = gaugeTableOf('Harrow', {})
const read = { table, row: { number: '2/0', mm: 0.27 }, measures: 'thickness' } as const

test('a size is said to be by the table, and how it stands to what is stated', () => {
  expect(gaugeSentence({ ...read, beside: null })).toBe('Thickness no. 2/0 by your table Harrow: 0.27 mm.')
  expect(gaugeSentence({ ...read, beside: { stated: 0.27, differenceMm: 0, agrees: true } })).toBe(
    'Thickness no. 2/0 by your table Harrow: 0.27 mm; agrees with the stated thickness of 0.27 mm.',
  )
  expect(gaugeSentence({ ...read, beside: { stated: 0.25, differenceMm: 0.02, agrees: false } })).toBe(
    'Thickness no. 2/0 by your table Harrow: 0.27 mm; 0.02 mm more than the stated thickness of 0.25 mm.',
  )
})

const doubts: readonly GaugeDoubt[] = [
  { code: 'none-named' },
  { code: 'several-named', names: ['Harrow', 'Brandsma'] },
  { code: 'other-words', name: 'Harrow', words: ['fine'] },
  { code: 'no-number', name: 'Harrow' },
  { code: 'several-numbers', name: 'Harrow', numbers: ['12', '2/0'], measures: 'thickness' },
  { code: 'either-measure', name: 'Harrow', number: '12' },
  { code: 'other-measure', name: 'Harrow', measures: 'height' },
  { code: 'no-row', name: 'Harrow', number: '12', measures: 'height' },
]

test.each(doubts.map((doubt) => [doubt.code, doubt] as const))('why nothing is looked up is told: %s', (_, doubt) => {
  expect(gaugeDoubt(doubt)).toMatch(/^[A-Z0-9][^\n]+\.$/)
})
