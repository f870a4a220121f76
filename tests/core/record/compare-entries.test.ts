import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fileCaliberSchema } from '../../../core/exchange/library-file.ts'
import { compareEntries } from '../../../core/record/compare-entries.ts'
import { blankEntry, openCaliber } from '../../../core/record/entry.ts'
import { arbitraryFileCaliber } from '../../support/arbitrary-library.ts'

const verrin = { ...blankEntry(), maker: 'Verrin', designation: '17-220' }

test('a field that was changed, one that came and one that went are told with their readings', () => {
  const before = { ...verrin, fields: { thirdWheel: [{ printed: '57' }], notes: [{ printed: 'worn' }] } }
  const after = {
    ...verrin,
    fields: { thirdWheel: [{ printed: '75', source: 'hb' }], escapeTeeth: [{ printed: '15' }] },
  }
  expect(compareEntries(before, after)).toEqual([
    { what: 'field', key: 'thirdWheel', before: [{ printed: '57' }], after: [{ printed: '75', source: 'hb' }] },
    { what: 'field', key: 'notes', before: [{ printed: 'worn' }], after: [] },
    { what: 'field', key: 'escapeTeeth', before: [], after: [{ printed: '15' }] },
  ])
})

test('another source, page or choice is a difference; that a lone reading is marked as chosen is none', () => {
  const of = (...readings: { printed: string; page?: string; chosen?: boolean }[]) => ({
    ...verrin,
    fields: { thirdWheel: readings },
  })
  expect(compareEntries(of({ printed: '75' }), of({ printed: '75', chosen: true }))).toEqual([])
  expect(compareEntries(of({ printed: '75' }), of({ printed: '75', page: '4' }))).toHaveLength(1)
  const [one, other] = [{ printed: '75' }, { printed: '57' }]
  expect(compareEntries(of({ ...one, chosen: true }, other), of(one, { ...other, chosen: true }))).toHaveLength(1)
})

test('of a list only the lines that differ are told, and a mere change of order is said', () => {
  const [click, stem, yoke] = [{ part: 'click' }, { part: 'stem' }, { part: 'yoke' }]
  const of = (...parts: Record<string, unknown>[]) => ({ ...verrin, parts })
  expect(compareEntries(of(click, stem), of(click, yoke, yoke))).toEqual([
    { what: 'list', key: 'parts', before: [stem], after: [yoke, yoke], moved: false },
  ])
  expect(compareEntries(of(click, stem), of(stem, click))).toEqual([
    { what: 'list', key: 'parts', before: [], after: [], moved: true },
  ])
})

test('a name, and what a newer version wrote, are compared too', () => {
  const after = { ...verrin, designation: '17-221', later: { kept: 1 } }
  expect(compareEntries(verrin, after)).toEqual([
    { what: 'field', key: 'designation', before: [{ printed: '17-220' }], after: [{ printed: '17-221' }] },
    { what: 'other', key: 'later', before: undefined, after: { kept: 1 } },
  ])
})

test('an entry differs in nothing from itself, and both ways in the same places', () => {
  const entry = arbitraryFileCaliber.map((caliber) => openCaliber(fileCaliberSchema.parse(caliber)))
  fc.assert(
    fc.property(entry, entry, (one, other) => {
      expect(compareEntries(one, structuredClone(one))).toEqual([])
      const places = (differences: ReturnType<typeof compareEntries>) => differences.map(({ key }) => key).sort()
      expect(places(compareEntries(one, other))).toEqual(places(compareEntries(other, one)))
    }),
    { numRuns: 60 },
  )
})

test('an overrule that came, went or says something else is told by its proof; their order is none', () => {
  const [one, other] = (['jewels-add-up', 'some-later-proof'] as const).map((proof) => ({
    proof,
    severity: 'accepted' as const,
    reason: 'Seen.',
    of: 'disagrees' as const,
  }))
  if (one === undefined || other === undefined) throw new Error('two overrules')
  const harsher = { ...other, severity: 'wrong' as const }
  expect(compareEntries(verrin, { ...verrin, overrules: [one] })).toEqual([
    { what: 'overrule', key: 'jewels-add-up', before: undefined, after: one },
  ])
  expect(compareEntries({ ...verrin, overrules: [one, other] }, { ...verrin, overrules: [harsher, one] })).toEqual([
    { what: 'overrule', key: 'some-later-proof', before: other, after: harsher },
  ])
  expect(compareEntries({ ...verrin, overrules: [one, other] }, { ...verrin, overrules: [other, one] })).toEqual([])
  expect(compareEntries({ ...verrin, overrules: [] }, verrin)).toEqual([])
})
