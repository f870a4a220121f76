import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { readField, readNames, writeNames } from '../../../core/record/read-field.ts'

const keys = Object.keys(caliberFields) as CaliberFieldKey[]

describe('a field is read by its row in the table', () => {
  test('a measured value comes with its quantity', () => {
    expect(readField('springThicknessMm', '0,18')).toMatchObject({ ok: true, value: 0.18, quantity: { unit: 'mm' } })
  })

  test('a choice is recognised by key or label', () => {
    for (const printed of ['centre-indirect', 'Centre, indirect', ' CENTRE INDIRECT '])
      expect(readField('secondsDisplay', printed)).toEqual({ ok: true, value: 'centre-indirect' })
    expect(readField('dialHours', '24')).toEqual({ ok: true, value: '24' })
    expect(readField('winding', 'rubber band')).toEqual({
      ok: false,
      problem: { code: 'not-a-choice', text: 'rubber band', choices: Object.values(caliberFields.winding.choices) },
    })
  })

  test('an unusual value is accepted and remarked on, an impossible one refused', () => {
    expect(readField('escapeTeeth', '12')).toMatchObject({ ok: true, remark: { code: 'unusual', value: 12 } })
    expect(readField('escapeTeeth', '15')).not.toHaveProperty('remark')
    expect(readField('escapeTeeth', '500')).toMatchObject({ ok: false, problem: { code: 'impossible' } })
  })

  test('names with commas in them survive a list', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z0-9][a-z0-9, .-]{0,8}[a-z0-9]$/), { maxLength: 4 }), (names) => {
        expect(readNames(writeNames(names))).toEqual(names)
      }),
    )
  })

  test('no text makes any field throw', () => {
    fc.assert(
      fc.property(fc.constantFrom(...keys), fc.string({ unit: 'binary' }), (key, text) => {
        expect(typeof readField(key, text).ok).toBe('boolean')
      }),
    )
  })
})
