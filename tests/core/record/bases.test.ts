import { expect, it } from 'vitest'
import { chooseBase, foldName, namesOfBase, withBases } from '../../../core/record/bases.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const named = (maker: string, designation: string, more: CaliberValues = {}) =>
  caliberOf({ maker, designation, ...more })

it('keeps points and strokes apart, and nothing else', () => {
  expect(foldName(' 17-220  B')).toBe('17-220 b')
  expect(foldName('8.5')).not.toBe(foldName('85'))
})

it('knows a base by its designation and its other names', () => {
  expect(namesOfBase(named('Verrin', '17-220', { alsoKnownAs: ['Sarelle 17'] }))).toEqual(['17-220', 'sarelle 17'])
})

it('means the own maker before another, and a designation before another name', () => {
  const variant = named('Verrin', '17-221', { basedOn: '17-220' })
  const alias = named('Verrin', '17', { alsoKnownAs: ['17-220'] })
  const own = named('verrin', '17-220')
  const foreign = named('Tolvaart', '17-220')
  expect(chooseBase(variant, [foreign, alias, own])).toBe(own)
  expect(chooseBase(variant, [foreign, alias])).toBe(alias)
  expect(chooseBase(variant, [foreign])).toBe(foreign)
  expect(chooseBase(variant, [])).toBeUndefined()
})

it('puts each variant over its base, and a variant of that over both', () => {
  const calibers = [
    named('Verrin', '3', { basedOn: '2' }),
    named('Verrin', '2', { basedOn: 'one', thirdWheel: 60 }),
    named('Verrin', '1', { alsoKnownAs: ['One'], thirdWheel: 75, centreWheel: 80 }),
  ]
  const [third, second, first] = withBases(calibers)
  expect(third?.values).toMatchObject({ designation: '3', thirdWheel: 60, centreWheel: 80 })
  expect(second?.inheritedKeys).toEqual(['centreWheel'])
  expect(first).toBe(calibers[2])
})

it('ends a chain that runs back into itself', () => {
  const calibers = [
    named('Verrin', '1', { basedOn: '2', centreWheel: 80 }),
    named('Verrin', '2', { basedOn: '1', thirdWheel: 75 }),
    named('Verrin', '4', { basedOn: '4' }),
  ]
  const [first, second, itself] = withBases(calibers)
  expect(first?.values).toMatchObject({ centreWheel: 80, thirdWheel: 75 })
  expect(second?.values).toMatchObject({ centreWheel: 80, thirdWheel: 75 })
  expect(itself?.base).toBeUndefined()
})
