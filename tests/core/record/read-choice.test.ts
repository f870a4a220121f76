import { describe, expect, test } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { choiceBegunBy, readChoice } from '../../../core/record/read-choice.ts'

const { springEnd } = caliberFields

describe('a choice is recognised', () => {
  test.each(['slipping-bridle', 'Slipping bridle', ' SLIPPING, BRIDLE ', 'Bride-Glissante', 'bride  glissante'])(
    'by %s',
    (printed) => {
      expect(readChoice(springEnd, printed)).toEqual({ ok: true, value: 'slipping-bridle' })
    },
  )

  test('and what is none of them is named with the choices', () => {
    expect(readChoice(springEnd, 'knot')).toEqual({
      ok: false,
      problem: { code: 'not-a-choice', text: 'knot', choices: Object.values(springEnd.choices) },
    })
    for (const blank of ['', '  '])
      expect(readChoice(springEnd, blank)).toEqual({ ok: false, problem: { code: 'empty' } })
    for (const mark of ['–', '…', '?']) expect(readChoice(springEnd, mark)).toMatchObject({ ok: false })
  })

  test('where it has no names beside its label', () => {
    expect(readChoice({ choices: { '12': '12', '24': '24' } }, '24')).toEqual({ ok: true, value: '24' })
  })
})

test.each([
  ['h', 'hole'],
  ['lo', 'loop'],
  ['loc', 'hole'],
  ['hole w', 'hole-with-brace'],
  ['tro', 'hole'],
  ['Öse', 'loop'],
  ['oes', 'loop'],
  ['x', undefined],
  ['', undefined],
  ['-', undefined],
] as const)('%s begins %s', (typed, choice) => {
  expect(choiceBegunBy(springEnd, typed)).toBe(choice)
})
