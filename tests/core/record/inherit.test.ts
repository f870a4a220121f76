import { expect, it } from 'vitest'
import { inherit, inheritFrom, originOf } from '../../../core/record/inherit.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const base = caliberPrinted({ ...soundWatch, thirdWheel: ['75', '57'], notes: 'a base', firstYear: '1926' })
const variant = caliberPrinted(
  { basedOn: '1', escapement: 'lever', centreWheel: '64' },
  { maker: 'Verrin', designation: '2' },
)

it('takes over what is not stated and keeps what is', () => {
  const { values, inheritedKeys } = inherit(variant, base)
  expect(values).toMatchObject({ centreWheel: 64, thirdWheel: 75, escapement: 'lever', goingHours: 40 })
  expect(inheritedKeys).toContain('thirdWheel')
  expect(inheritedKeys).not.toContain('centreWheel')
})

it('leaves name, years and notes with the base', () => {
  const { values } = inherit(variant, base)
  expect(values).toMatchObject({ maker: 'Verrin', designation: '2' })
  expect(values).not.toHaveProperty('notes')
  expect(values).not.toHaveProperty('firstYear')
})

it('takes the chosen reading along and no other', () => {
  expect(inherit(variant, base).readings.thirdWheel?.map(({ printed }) => printed)).toEqual(['75'])
})

it('inherits the jewels whole or not at all', () => {
  const seven = [{ place: 'balance', kind: 'hole', count: 7 }]
  const jewelled = caliberOf({ jewelsStated: 7 }, seven)
  expect(inherit(caliberOf({ basedOn: '1' }), jewelled)).toMatchObject({
    values: { jewelsStated: 7 },
    lists: { jewels: seven },
  })
  expect(inherit(caliberOf({ basedOn: '1', jewelsStated: 9 }), jewelled).lists.jewels).toEqual([])
  const listed = inherit(caliberOf({ basedOn: '1' }, [{ place: 'balance', kind: 'cap', count: 2 }]), jewelled)
  expect(listed.values).not.toHaveProperty('jewelsStated')
})

it('leaves behind what hangs together with something the variant states', () => {
  const dial24 = caliberOf({ dialHours: '24', hourWheel: 64, diameterMm: 38, sweepDriver: 60 })
  const other = inherit(caliberOf({ hourWheel: 40, shape: 'oval', secondsDisplay: 'small' }), dial24)
  expect(other.values).toEqual({ hourWheel: 40, shape: 'oval', secondsDisplay: 'small' })
  expect(inherit(caliberOf({}), dial24).values).toEqual(dial24.values)
})

it('takes over each other list that is blank', () => {
  const oiled = { ...base, lists: { ...base.lists, lubrication: [{ place: 'barrel', lubricant: 'heavy oil' }] } }
  expect(inherit(variant, oiled).lists.lubrication).toEqual(oiled.lists.lubrication)
})

it('inherits through a chain of bases', () => {
  const second = caliberOf({ designation: '2', basedOn: '1', centreWheel: 64 })
  const { values, base: nearest } = inheritFrom(caliberOf({ designation: '3', basedOn: '2' }), [second, base])
  expect(values).toMatchObject({ designation: '3', centreWheel: 64, thirdWheel: 75 })
  expect(nearest?.values).toMatchObject({ designation: '2', thirdWheel: 75 })
})

it('is itself without a base', () => {
  expect(inheritFrom(variant, [])).toBe(variant)
})

it('knows which caliber of the line states a field', () => {
  const first = caliberOf({ designation: '1', thirdWheel: 75, centreWheel: 80 })
  const third = inheritFrom(caliberOf({ designation: '3', basedOn: '2', escapeTeeth: 15 }), [
    caliberOf({ designation: '2', basedOn: '1', centreWheel: 64 }),
    first,
  ])
  expect(originOf(third, 'thirdWheel')).toBe(first)
  expect(originOf(third, 'centreWheel')?.values.designation).toBe('2')
  expect(originOf(third, 'escapeTeeth')).toBeUndefined()
  expect(originOf(third, 'fifthWheel')).toBeUndefined()
})

it("keeps the variant's own overrules and takes none from the base", () => {
  const overruled = (proof: string) => ({ proof, severity: 'accepted', reason: 'Seen.', of: 'disagrees' }) as const
  const based = { ...base, overrules: [overruled('sources-agree')] }
  expect(inherit(variant, based).overrules).toBeUndefined()
  const own = { ...variant, overrules: [overruled('jewels-add-up')] }
  expect(inherit(own, based).overrules).toEqual(own.overrules)
})
