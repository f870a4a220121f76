import { expect, test } from 'vitest'
import { readSourceUnits, sourceUnits, wordSourceUnits } from '../../../core/record/source-units.ts'

test('each choice is read as itself, and so is a lone word for its unit', () => {
  for (const choice of Object.keys(sourceUnits)) expect(readSourceUnits(choice)).toBe(choice)
  expect(
    ['lignes', 'Linien', "'''", 'inches', 'Zoll', 'millimetres', 'douzièmes', ' MM '].map(readSourceUnits),
  ).toEqual(['ligne', 'ligne', 'ligne', 'inch', 'inch', 'mm', 'douzieme', 'mm'])
})

test('words that name no unit or several are taken for nothing, and stay readable', () => {
  for (const words of ['', 'mm and inch', 'as the trade prints them', 'constructor', 'micrometres']) {
    expect(readSourceUnits(words)).toBeUndefined()
    expect(wordSourceUnits(words)).toBe(words)
  }
  expect(readSourceUnits()).toBeUndefined()
  expect(wordSourceUnits('lignes')).toBe('lignes, heights in millimetres')
})
