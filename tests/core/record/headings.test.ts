import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { fieldFromHeading, headingOf, namesOf } from '../../../core/record/headings.ts'

const keys = Object.keys(caliberFields) as CaliberFieldKey[]

test('a heading that is written is recognised again', () => {
  for (const key of keys) expect(fieldFromHeading(headingOf(key))).toBe(key)
})

test('every name of every field is recognised, whatever its case', () => {
  for (const key of keys) {
    for (const name of namesOf(key)) {
      expect(fieldFromHeading(name), name).toBe(key)
      expect(fieldFromHeading(` ${name.toUpperCase()}. `), name).toBe(key)
    }
  }
})

describe('the naming traps of the trade', () => {
  test.each<[string, CaliberFieldKey]>([
    ['Minutenrad', 'centreWheel'],
    ['Wechselrad', 'minuteWheel'],
    ['minute wheel', 'minuteWheel'],
    ['roue de minuterie', 'minuteWheel'],
    ['grande moyenne', 'centreWheel'],
    ['petite moyenne', 'thirdWheel'],
    ['Kleinbodenrad', 'thirdWheel'],
    ['minuutrad', 'centreWheel'],
    ['wisselrad', 'minuteWheel'],
    ['Minutenrohr', 'cannonPinion'],
  ])('%s is %s', (name, key) => {
    expect(fieldFromHeading(name)).toBe(key)
  })

  test('Kronrad, which is the winding crown wheel or the verge escape wheel, names no field', () => {
    expect(fieldFromHeading('Kronrad')).toBeUndefined()
    expect(fieldFromHeading('crown wheel')).toBeUndefined()
  })

  test('a bare Gang, which is a rate, an escapement or a going, names no field', () => {
    expect(fieldFromHeading('Gang')).toBeUndefined()
  })
})

describe('a unit in the heading', () => {
  test('is allowed where a bare number is read in it', () => {
    expect(fieldFromHeading('Diameter (mm)')).toBe('diameterMm')
    expect(fieldFromHeading('Höhe [mm]')).toBe('heightMm')
    expect(fieldFromHeading('Beat rate (A/h)')).toBe('beatRateVph')
    expect(fieldFromHeading('angle de levée (°)')).toBe('liftAngleDeg')
  })

  test('is refused where the numbers under it would be taken for something else', () => {
    expect(fieldFromHeading('Diameter (lignes)')).toBeUndefined()
    expect(fieldFromHeading('Spring thickness (1/100 mm)')).toBeUndefined()
    expect(fieldFromHeading('Beat rate (Hz)')).toBeUndefined()
    expect(fieldFromHeading('Barrel teeth (mm)')).toBeUndefined()
  })
})

test('no heading makes it throw, and an empty one names nothing', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) =>
      ['string', 'undefined'].includes(typeof fieldFromHeading(text)),
    ),
  )
  for (const text of ['', ' ', '()', '(mm)', 'constructor', '__proto__']) expect(fieldFromHeading(text)).toBeUndefined()
})
