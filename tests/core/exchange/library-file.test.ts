import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fileCaliberSchema } from '../../../core/exchange/library-file.ts'
import { closeEntry, openCaliber } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'

const named = { maker: 'Verrin', designation: '17-220' }
const open = (fields: unknown) => openCaliber(fileCaliberSchema.parse({ ...named, fields }))
/** What is exported after an import. */
const again = (fields: unknown): unknown => JSON.parse(JSON.stringify(closeEntry(open(fields)).fields))

describe('a field that only a newer version knows', () => {
  test('may hold anything, and is exported as it came', () => {
    const fields = {
      sealed: true,
      retired: null,
      weightG: 12.5,
      finishes: ['gilt', 'nickel'],
      none: [],
      alarm: { hours: 12, tones: [{ pitch: 'high' }] },
      shades: [{ printed: 'grey' }, false],
    }
    expect(again(fields)).toEqual(fields)
  })

  test('is shown as JSON and named among the unknown keys, and no value is read from it', () => {
    const entry = open({ alarm: { hours: 12 }, sealed: true })
    expect(entry.fields).toEqual({
      alarm: [{ printed: '{"hours":12}', asWritten: { hours: 12 }, chosen: true }],
      sealed: [{ printed: 'true', asWritten: true, chosen: true }],
    })
    const { caliber, problems, unknownKeys } = readEntry(entry)
    expect(unknownKeys).toEqual(['alarm', 'sealed'])
    expect(problems).toEqual([])
    expect(caliber.values).toEqual(named)
  })

  test('is a reading like any other where it has the form of one', () => {
    const fields = { colour: 'gilt', crystal: { printed: '1,8', source: 'hb1', page: '4' } }
    expect(open(fields).fields).toEqual({
      colour: [{ printed: 'gilt', chosen: true }],
      crystal: [{ printed: '1,8', source: 'hb1', page: '4', chosen: true }],
    })
    expect(again(fields)).toEqual(fields)
  })

  test('survives import and export whatever it holds', () => {
    const anything = fc
      .json({ maxDepth: 3 })
      .map((text): unknown => JSON.parse(text.replace(/-0(?![\d.])/g, '0')))
      .filter((value) => typeof value !== 'object' || value === null || !('printed' in value))
    fc.assert(
      fc.property(anything, (value) => {
        expect(again({ xNew: value })).toEqual({ xNew: value })
      }),
      { numRuns: 500 },
    )
  })
})

test('a field that is known is held to its form', () => {
  for (const value of [true, null, { hours: 12 }, [null]]) {
    expect(fileCaliberSchema.safeParse({ ...named, fields: { springThicknessMm: value } }).success).toBe(false)
  }
})

test('a caliber without fields has none, and fields that are no object are refused', () => {
  expect(fileCaliberSchema.parse(named).fields).toEqual({})
  for (const fields of [null, [], 'x']) expect(fileCaliberSchema.safeParse({ ...named, fields }).success).toBe(false)
})
