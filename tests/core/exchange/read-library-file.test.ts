import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { LignebookError } from '../../../core/api/errors.ts'
import { jsonFaultOffset } from '../../../core/exchange/json-fault.ts'
import { readLibraryFile } from '../../../core/exchange/read-library-file.ts'
import { writeLibraryFile } from '../../../core/exchange/write-library-file.ts'
import { closeEntry, openCaliber } from '../../../core/record/entry.ts'
import { arbitraryLibraryDocument } from '../../support/arbitrary-library.ts'

const refusal = (text: string) => {
  try {
    readLibraryFile(text, 'book.json')
  } catch (error) {
    if (error instanceof LignebookError) return error.failure
    throw error
  }
  return null
}

describe('a file that cannot be read is refused with its place', () => {
  const caliber = { maker: 'Verrin', designation: '17-220' }
  test.each([
    ['{"lignebook": 1,\n "calibers": [}', 'line 2, position 15'],
    ['{"lignebook": 1', 'line 1, position 16'],
    ['hello', 'line 1, position 1'],
    ['', ''],
    ['[]', 'lignebook'],
    ['null', 'lignebook'],
    ['{"calibers": []}', 'lignebook'],
    ['{"lignebook": 2}', 'lignebook'],
    [JSON.stringify({ lignebook: 1, calibers: [{ maker: 'Verrin' }] }), 'calibers[0].designation'],
    [
      '{"lignebook": 1, "calibers": [{}, {"fields": {"thirdWheel": 75, "thirdWheel": 57}}]}',
      'calibers[1].fields.thirdWheel',
    ],
    [
      JSON.stringify({ lignebook: 1, calibers: [caliber, { ...caliber, fields: { springThicknessMm: true } }] }),
      'calibers[1].fields.springThicknessMm',
    ],
  ])('%s', (text, where) => {
    const failure = refusal(text)
    expect(failure).toMatchObject({ code: 'file-not-readable', details: { file: 'book.json', where } })
    expect(failure?.details.what).toMatch(/.{20,}/)
  })

  test('a byte order mark is passed over', () => {
    expect(readLibraryFile('\ufeff{"lignebook":1}', 'book.json').calibers).toEqual([])
  })

  test('no text makes it fail in another way, and sound JSON has no fault before its end', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => void refusal(text)))
    fc.assert(
      fc.property(fc.json(), (json) => {
        expect(jsonFaultOffset(json)).toBe(json.length)
      }),
    )
  })

  test('the fault is placed where sound JSON was cut off or spoilt', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 3 }), fc.nat(), (json, at) => {
        const cut = at % json.length
        expect(jsonFaultOffset(`[${json.slice(0, cut)}\u0001`)).toBeLessThanOrEqual(cut + 1)
      }),
    )
  })
})

test('exporting and importing again gives the same library, unknown keys included', () => {
  const opened = (text: string) => {
    const file = readLibraryFile(text, 'book.json')
    return { ...file, calibers: file.calibers.map(openCaliber) }
  }
  fc.assert(
    fc.property(arbitraryLibraryDocument, (document) => {
      const library = opened(JSON.stringify(document))
      const text = writeLibraryFile({ ...library, calibers: library.calibers.map(closeEntry) })
      const again = opened(text)
      const withoutEmpty = library.calibers.map((entry) => ({
        ...entry,
        fields: Object.fromEntries(Object.entries(entry.fields).filter(([, readings]) => readings.length > 0)),
      }))
      expect(again).toEqual({ ...library, calibers: withoutEmpty })
      expect(writeLibraryFile({ ...again, calibers: again.calibers.map(closeEntry) })).toBe(text)
    }),
    { numRuns: 300 },
  )
})

test('a field with two chosen readings is refused where it stands, but kept as written where only a newer version knows it', () => {
  const both = [
    { printed: '480', source: 'hb1', chosen: true },
    { printed: '500', source: 'hb2', chosen: true },
  ]
  const textOf = (fields: unknown) =>
    JSON.stringify({ lignebook: 1, calibers: [{ maker: 'Verrin', designation: '17-220', fields }] })
  expect(refusal(textOf({ springLengthMm: both }))?.details).toEqual({
    file: 'book.json',
    where: 'calibers[0].fields.springLengthMm',
    what: 'two readings are chosen here, and only one can be; leave "chosen" at one of them',
  })
  expect(readLibraryFile(textOf({ springTemper: both }), 'book.json').calibers[0]?.fields.springTemper).toEqual({
    printed: JSON.stringify(both),
    asWritten: both,
  })
})

test('an overrule without a reason, of another kind, or of one proof twice is refused where it stands', () => {
  const overrule = { proof: 'jewels-add-up', severity: 'accepted', reason: 'Caps added.', of: 'disagrees' }
  const refusalOf = (...overrules: unknown[]) => {
    const calibers = [{ maker: 'Verrin', designation: '17-220', overrules }]
    const { where, what } = refusal(JSON.stringify({ lignebook: 1, calibers }))?.details ?? {}
    return [where, what]
  }
  expect(refusalOf({ ...overrule, reason: ' ' })).toEqual([
    'calibers[0].overrules[0].reason',
    'this is blank; fill it in',
  ])
  const { reason: _, ...bare } = overrule
  expect(refusalOf(bare)).toEqual(['calibers[0].overrules[0].reason', 'this is missing; fill it in'])
  expect(refusalOf({ ...overrule, severity: 'fine' })).toEqual([
    'calibers[0].overrules[0].severity',
    'one of "accepted", "doubtful", "wrong" is expected here',
  ])
  expect(refusalOf(overrule, overrule)).toEqual([
    'calibers[0].overrules',
    'one proof is overruled twice; leave one of the two',
  ])
})
