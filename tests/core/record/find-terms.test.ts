import { expect, test } from 'vitest'
import { findTerms } from '../../../core/record/find-terms.ts'
import { glossary } from '../../../core/record/glossary.ts'

const terms = glossary()
const labels = (typed: string) => findTerms(terms, typed).map(({ label }) => label)

test.each([
  ['wechselrad', 'Minute wheel'],
  ['Roue de Minuterie', 'Minute wheel'],
  ['MINUTENRAD', 'Centre wheel'],
  ['unruhe', 'Balance'],
  ['bruecke', 'Bridge'],
  ['brucke', 'Bridge'],
  ['stosssicherung', 'Shock protection'],
  ['pare chocs', 'Shock protection'],
  ['echappement a ancre', 'Lever escapement'],
  ['veerton', 'Barrel'],
  ['click', 'Click'],
])('%s finds %s first', (typed, label) => {
  expect(labels(typed)[0]).toBe(label)
})

test('a whole name comes before the names that contain it', () => {
  const found = labels('balance')
  expect(found[0]).toBe('Balance')
  expect(found).toContain('Balance staff')
})

test('scattered words and words of the explanation are found, after the names', () => {
  expect(labels('wheel roue seconde')).toContain('Fourth wheel')
  expect(labels('britannica')).toEqual(['Cannon pinion', 'Hour wheel'])
})

test('nothing typed shows everything in its order, and nonsense nothing', () => {
  expect(findTerms(terms, '  ')).toEqual(terms)
  expect(labels('zzqx')).toEqual([])
})
