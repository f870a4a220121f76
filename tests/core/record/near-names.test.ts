import { expect, test } from 'vitest'
import { type CaliberNames, isNearMaker, nearName } from '../../../core/record/near-names.ts'

const of = (maker: string, designation: string, ...alsoKnownAs: string[]): CaliberNames => ({
  maker,
  designation,
  alsoKnownAs,
})

test.each([
  [of('Verrin', '17-220'), of('VERRIN', '17.220'), 'same-name'],
  [of('Verrin', '17-220'), of('Verin', '17 220'), 'other-maker-spelling'],
  [of('Pellorce', '15-8'), of('Pellorce Frères', '15-8'), 'other-maker-spelling'],
  [of('Verrin', 'V. 17'), of('Verrin', '17-220', 'V17'), 'other-name'],
  [of('Verrin', '17-220', 'V. 17'), of('Brandsund', '9', 'V17'), 'other-name'],
  [of('Verrin', '17-220'), of('Verrin', '17-221'), 'one-character'],
  [of('Verrin', '17-202'), of('Verrin', '17-220'), 'one-character'],
] as const)('%j is near %j', (typed, other, reason) => expect(nearName(typed, other)).toBe(reason))

test.each([
  [of('Verrin', '17-220'), of('Brandsund', '17-220')],
  [of('Verrin', '17-220'), of('Brandsund', '17-221')],
  [of('Verrin', '8'), of('Verrin', '9')],
  [of('Verrin', '216'), of('Verrin', '217')],
  [of('Verrin', ''), of('Verrin', '17')],
  [of('Verrin', '-'), of('Verrin', '.')],
])('%j is not near %j', (typed, other) => expect(nearName(typed, other)).toBeUndefined())

test('short makers are one only where they are alike', () => {
  expect(isNearMaker('AB', 'ab')).toBe(true)
  expect(isNearMaker('AB', 'AC')).toBe(false)
  expect(isNearMaker('AB', 'ABC Werke')).toBe(false)
})
