import { describe, expect, test } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { type FieldDef, languages } from '../../../core/fields/field.ts'
import { foldHeading } from '../../../core/record/fold-heading.ts'
import { readField } from '../../../core/record/read-field.ts'

const rows = (Object.entries(caliberFields) as [CaliberFieldKey, FieldDef][]).flatMap(([key, def]) =>
  def.kind === 'choice' ? [[key, def] as const] : [],
)
const named = rows.filter(([, { choiceNames }]) => choiceNames !== undefined)

test('every field whose choices are words has each choice named in four languages', () => {
  expect(rows.filter(([, { choiceNames }]) => choiceNames === undefined).map(([key]) => key)).toEqual(['dialHours'])
  for (const [key, { choices, choiceNames = {} }] of named) {
    expect(Object.keys(choiceNames), key).toEqual(Object.keys(choices))
    for (const names of Object.values(choiceNames))
      for (const language of languages) expect(names[language].length, `${key} in ${language}`).toBeGreaterThan(0)
  }
})

test('a word stands for one choice of its field and no other', () => {
  for (const [key, { choices, choiceNames = {} }] of named) {
    const owner = new Map<string, string>()
    for (const [choice, label] of Object.entries(choices)) {
      for (const word of [choice, label, ...Object.values(choiceNames[choice] ?? {}).flat()]) {
        const folded = foldHeading(word)
        expect(folded, `${key}: ${word}`).not.toBe('')
        expect(owner.get(folded) ?? choice, `${key}: ${word}`).toBe(choice)
        owner.set(folded, choice)
      }
    }
  }
})

test('every name is read as its choice, in capitals too', () => {
  for (const [key, { choiceNames = {} }] of named) {
    for (const [choice, names] of Object.entries(choiceNames)) {
      for (const word of Object.values(names).flat()) {
        expect(readField(key, word), `${key}: ${word}`).toMatchObject({ ok: true, value: choice })
        expect(readField(key, ` ${word.toUpperCase()} `), `${key}: ${word}`).toMatchObject({ ok: true, value: choice })
      }
    }
  }
})

// Found in print (research/trains.md, section 12): K is Kindler, Die Uhren (Project Gutenberg 50244), G the German-English
// word list of TU Chemnitz, B Biekorf 17 (1906), T a Dutch glossary of tower clocks.
describe('words found in print', () => {
  test.each([
    ['escapement', 'Ankerhemmung', 'lever', 'K G'],
    ['escapement', 'Anker', 'lever', 'K B'],
    ['escapement', 'Zylinderhemmung', 'cylinder', 'K'],
    ['escapement', 'Spindelhemmung', 'verge', 'K G'],
    ['escapement', 'Chronometerhemmung', 'detent', 'K'],
  ] as const)('%s: %s', (field, word, choice, _found) => {
    expect(readField(field, word)).toMatchObject({ ok: true, value: choice })
  })
})

// From memory, common practice: no print was found for these (research/mainsprings.md, section 7, [CP]; trains.md, section
// 12, M). Every other name in core/fields/choice-names.ts is from memory too.
describe('words from memory, common practice', () => {
  test.each([
    ['springEnd', 'Loch', 'hole'],
    ['springEnd', 'trou', 'hole'],
    ['springEnd', 'gat', 'hole'],
    ['springEnd', 'crochet', 'tongue'],
    ['springEnd', 'Haken', 'tongue'],
    ['springEnd', 'haak', 'tongue'],
    ['springEnd', 'hooked end', 'tongue'],
    ['springEnd', 'Zaum', 'slipping-bridle'],
    ['springEnd', 'Gleitzaum', 'slipping-bridle'],
    ['springEnd', 'bride glissante', 'slipping-bridle'],
    ['springEnd', 'sleepveer', 'slipping-bridle'],
    ['springEnd', 'T-Ende', 't-end'],
    ['springEnd', 'bout en T', 't-end'],
    ['springEnd', 'Oese', 'loop'],
    ['springEnd', 'oeil', 'loop'],
    ['springMaterial', 'Stahl', 'carbon-steel'],
    ['springMaterial', 'acier', 'carbon-steel'],
    ['springMaterial', 'acier bleui', 'carbon-steel'],
    ['springMaterial', 'staal', 'carbon-steel'],
    ['springMaterial', 'rostfrei', 'stainless'],
    ['springMaterial', 'inox', 'stainless'],
    ['springMaterial', 'r.v.s.', 'stainless'],
    ['springMaterial', 'Kobalt-Nickel', 'cobalt-nickel'],
    ['winding', 'Schluessel', 'key'],
    ['winding', 'clef', 'key'],
    ['setting', 'Drücker', 'pin'],
    ['secondsDisplay', 'petite seconde', 'small'],
    ['shape', 'rechthoekig', 'rectangular'],
  ] as const)('%s: %s', (field, word, choice) => {
    expect(readField(field, word)).toMatchObject({ ok: true, value: choice })
  })
})

test('a word that may be two choices, or none, is not guessed at', () => {
  for (const [field, word] of [
    ['springEnd', 'brace'],
    ['springEnd', 'T'],
    ['springEnd', 'bayonet'],
    ['springMaterial', 'unzerbrechlich'],
    ['secondsDisplay', 'Zentralsekunde'],
    ['winding', 'hand-wound'],
  ] as const)
    expect(readField(field, word)).toMatchObject({ ok: false, problem: { code: 'not-a-choice', text: word } })
})
