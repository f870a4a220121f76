import { expect, test } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { languages } from '../../../core/fields/field.ts'
import { listFields } from '../../../core/fields/list-fields.ts'
import { type PartDef, partNames } from '../../../core/fields/part-names.ts'

const parts: readonly (readonly [string, PartDef])[] = Object.entries(partNames)

test('no part has the key of a field or a list', () => {
  expect(parts.map(([key]) => key).filter((key) => key in caliberFields || key in listFields)).toEqual([])
})

test.each(parts)('%s has a meaning, and a name in each language', (_, { meaning, names, found }) => {
  expect(meaning).toMatch(/^[A-Z].*\.$/)
  for (const language of languages) {
    expect(names[language].length).toBeGreaterThan(0)
    expect(new Set(names[language]).size).toBe(names[language].length)
  }
  for (const sources of Object.values(found ?? {})) expect(sources.length).toBeGreaterThan(0)
})

// Kindler (Project Gutenberg 50244) for the German, Biekorf 17 (1906) for the Dutch; the rest from memory, common practice.
test.each([
  ['ratchetWheel', 'Sperrrad', 'palrad'],
  ['crownWheel', 'Kronrad', 'kroonrad'],
  ['fusee', 'Schnecke', 'snek'],
  ['verge', 'Spindel', 'spil'],
  ['pivot', 'Zapfen', 'tap'],
] as const)('%s is %s in German and %s in Dutch, as printed', (key, german, dutch) => {
  const { names }: PartDef = partNames[key]
  expect(names.de).toContain(german)
  expect(names.nl).toContain(dutch)
})
