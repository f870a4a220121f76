import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type CaliberEntry, type EntryReading, fileCaliberSchema } from '../../../core/exchange/library-file.ts'
import { type ListKey, listFields } from '../../../core/fields/list-fields.ts'
import { blankEntry, openCaliber } from '../../../core/record/entry.ts'
import { mergeEntries } from '../../../core/record/merge-entries.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { arbitraryFileCaliber } from '../../support/arbitrary-library.ts'

const arbitraryEntry = arbitraryFileCaliber.map((file) => openCaliber(fileCaliberSchema.parse(file)))
const entry = (fields: Record<string, EntryReading[]>, more: Partial<CaliberEntry> = {}): CaliberEntry => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation: '17-220',
  ...more,
  fields,
})
const lists = Object.keys(listFields) as ListKey[]
const says = (value: unknown) => (typeof value === 'object' ? JSON.stringify(value) : String(value).trim())
const within = (less: Record<string, unknown>, more: Record<string, unknown>) =>
  Object.entries(less).every(([key, value]) => key === 'chosen' || says(value) === says(more[key]))
const isStated = ({ printed, source, page, note }: EntryReading) =>
  printed.trim() !== '' || Boolean(source ?? page ?? note)

describe('two records of one caliber', () => {
  test('a reading that differs stands beside the chosen one, with its source', () => {
    const merged = mergeEntries(
      entry({ thirdWheel: [{ printed: '75', source: 'a', page: '4', chosen: true }] }),
      entry({
        thirdWheel: [{ printed: '57', source: 'b', chosen: true }],
        barrelTeeth: [{ printed: '78', chosen: true }],
      }),
    )
    expect(merged.entry.fields).toEqual({
      thirdWheel: [
        { printed: '75', source: 'a', page: '4', chosen: true },
        { printed: '57', source: 'b' },
      ],
      barrelTeeth: [{ printed: '78', chosen: true }],
    })
    expect(merged.filled).toEqual(['barrelTeeth'])
    expect(merged.beside.map(({ key, added }) => [key, added.length])).toEqual([['thirdWheel', 1]])
  })

  test('the same value said with its source is one reading, and is not said twice', () => {
    const plain = entry({ thirdWheel: [{ printed: '75', chosen: true }] })
    const sourced = entry({ thirdWheel: [{ printed: '75', source: 'b', page: '9', chosen: true }] })
    const both = { thirdWheel: [{ printed: '75', source: 'b', page: '9', chosen: true }] }
    expect(mergeEntries(plain, sourced).entry.fields).toEqual(both)
    expect(mergeEntries(sourced, plain).entry.fields).toEqual(both)
  })

  test('the other designation, and a maker spelt otherwise, become names of the one that stays', () => {
    const merged = mergeEntries(
      entry({ alsoKnownAs: [{ printed: 'V. 17', source: 'a', chosen: true }] }),
      entry({ alsoKnownAs: [{ printed: 'V. 17, Reise', chosen: true }] }, { maker: 'Verin', designation: '17220' }),
    )
    expect(merged.names).toEqual(['17220', 'Verin 17220', 'Reise'])
    expect(readEntry(merged.entry).caliber.values.alsoKnownAs).toEqual(['V. 17', '17220', 'Verin 17220', 'Reise'])
    expect(merged.entry.fields.alsoKnownAs?.[0]).toEqual({ printed: 'V. 17', source: 'a' })
  })

  test('lines of a list that say no more are not doubled; others are added', () => {
    const line = { place: 'balance', kind: 'hole', count: 2 }
    const merged = mergeEntries(
      entry({}, { jewels: [line] }),
      entry(
        {},
        {
          jewels: [
            { ...line, count: '2' },
            { ...line, kind: 'cap' },
          ],
        },
      ),
    )
    expect(merged.entry.jewels).toEqual([line, { ...line, kind: 'cap' }])
    expect(merged.lines).toEqual([{ list: 'jewels', added: 1 }])
  })
})

test('no printed reading, name, line or unknown part of either is lost', () => {
  fc.assert(
    fc.property(arbitraryEntry, arbitraryEntry, (keep, from) => {
      const { entry: merged } = mergeEntries(keep, from)
      for (const one of [keep, from]) {
        for (const [key, readings] of Object.entries(one.fields))
          for (const reading of readings.filter(isStated))
            expect(merged.fields[key]?.some((other) => within(reading, other))).toBe(true)
        for (const list of lists)
          for (const line of one[list]) expect(merged[list].some((other) => within(line, other))).toBe(true)
        for (const key of Object.keys(one)) expect(Object.hasOwn(merged, key)).toBe(true)
      }
      expect(merged).toMatchObject({ maker: keep.maker, designation: keep.designation })
    }),
    { numRuns: 500 },
  )
})

test('what counted in the one that stays goes on counting', () => {
  fc.assert(
    fc.property(arbitraryEntry, arbitraryEntry, (keep, from) => {
      const { alsoKnownAs: _, ...before } = readEntry(keep).caliber.values
      expect(readEntry(mergeEntries(keep, from).entry).caliber.values).toMatchObject(before)
    }),
    { numRuns: 500 },
  )
})

test('a record merged with itself says what it said', () => {
  fc.assert(
    fc.property(arbitraryEntry, (one) => {
      const twice = mergeEntries(one, one)
      expect(twice.filled).toEqual([])
      expect(twice.beside).toEqual([])
      expect(twice.lines).toEqual([])
      expect(twice.names).toEqual([])
    }),
  )
})

test('the overrule of the one that stays holds; those of proofs that only the other overruled come along', () => {
  const overrule = (proof: string, reason: string) =>
    ({ proof, severity: 'accepted', reason, of: 'disagrees' }) as const
  const keep = entry({}, { overrules: [overrule('jewels-add-up', 'Caps added.')] })
  const added = overrule('some-later-proof', 'Seen.')
  const merged = mergeEntries(keep, entry({}, { overrules: [overrule('jewels-add-up', 'No matter.'), added] }))
  expect(merged.entry.overrules).toEqual([overrule('jewels-add-up', 'Caps added.'), added])
  expect(merged.overrules).toEqual([added])
  expect(mergeEntries(entry({}), entry({})).entry).not.toHaveProperty('overrules')
})
