import fc from 'fast-check'
import { expect, test } from 'vitest'
import { foldHeading } from '../../../core/record/fold-heading.ts'

test('case, accents, joined letters, spaces and punctuation do not count', () => {
  expect(foldHeading('  Roue d’Échappement ')).toBe(foldHeading("roue d'echappement"))
  expect(foldHeading('Höhe über alles')).toBe('hoheuberalles')
  expect(foldHeading('Stoßsicherung')).toBe(foldHeading('STOSSSICHERUNG'))
  expect(foldHeading('œuvre')).toBe('oeuvre')
  expect(foldHeading('A/h')).toBe('ah')
})

test('letters of another cut fold to plain ones', () => {
  expect(foldHeading('𝐀nker')).toBe('anker')
})

test('folding a folded heading changes nothing', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => foldHeading(foldHeading(text)) === foldHeading(text)))
})
