import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { caliberEntrySchema, fileCaliberSchema } from '../../../core/exchange/library-file.ts'
import { blankEntry, closeEntry, openCaliber } from '../../../core/record/entry.ts'
import { arbitraryFileCaliber } from '../../support/arbitrary-library.ts'

const open = (fields: unknown) =>
  openCaliber(fileCaliberSchema.parse({ maker: 'Verrin', designation: '17-220', fields }))

describe('a caliber in a file is opened into an entry', () => {
  test('numbers, texts, readings and several readings all become readings, one of them chosen', () => {
    const { fields } = open({
      beatRateVph: 18000,
      diameterMm: "17'''",
      springThicknessMm: { printed: '0,18', source: 'hb1', page: 44 },
      springLengthMm: [{ printed: '480' }, { printed: '500', chosen: true }],
      springHeightMm: ['1.5', '1.55'],
      alsoKnownAs: ['V. 17', '17220'],
    })
    expect(fields).toEqual({
      beatRateVph: [{ printed: '18000', chosen: true }],
      diameterMm: [{ printed: "17'''", chosen: true }],
      springThicknessMm: [{ printed: '0,18', source: 'hb1', page: '44', chosen: true }],
      springLengthMm: [{ printed: '480' }, { printed: '500', chosen: true }],
      springHeightMm: [{ printed: '1.5', chosen: true }, { printed: '1.55' }],
      alsoKnownAs: [{ printed: 'V. 17, 17220', chosen: true }],
    })
  })

  test('a lone reading without a source closes to its printed text, a list of names to a list', () => {
    const fields = { diameterMm: "17'''", alsoKnownAs: ['V. 17'], springHeightMm: { printed: '1.5', page: '3' } }
    expect(closeEntry(open(fields)).fields).toEqual(fields)
  })

  test('a blank entry is an entry', () => {
    expect(caliberEntrySchema.parse(blankEntry())).toEqual(blankEntry())
  })
})

test('closing an entry and opening it again loses nothing, unknown keys included', () => {
  fc.assert(
    fc.property(arbitraryFileCaliber, (document) => {
      const entry = openCaliber(fileCaliberSchema.parse(document))
      // A field without any reading says nothing and is not written.
      const fields = Object.fromEntries(Object.entries(entry.fields).filter(([, readings]) => readings.length > 0))
      const written: unknown = JSON.parse(JSON.stringify(closeEntry(entry)))
      expect(openCaliber(fileCaliberSchema.parse(written))).toEqual({ ...entry, fields })
    }),
    { numRuns: 500 },
  )
})

test('an empty list of overrules is none', () => {
  const file = fileCaliberSchema.parse({ maker: 'Verrin', designation: '17-220', overrules: [] })
  expect(openCaliber(file)).not.toHaveProperty('overrules')
})
