import { expect, test } from 'vitest'
import { glossary } from '../../../core/record/glossary.ts'
import { namingTraps } from '../../../core/record/naming-traps.ts'

test('the two Minutenräder, the two crown wheels and the old hour wheel are explained where one looks', () => {
  for (const key of ['centreWheel', 'minuteWheel'] as const)
    expect(namingTraps(key).join(' ')).toContain('Minutenrad is the centre wheel')
  for (const key of ['crownWheel', 'vergeEscapement'] as const)
    expect(namingTraps(key).join(' ')).toContain('escape wheel of a verge watch')
  expect(namingTraps('cannonPinion').join(' ')).toContain('turns once in an hour')
  expect(namingTraps('balance').join(' ')).toContain('Unruh and Unruhe')
  expect(namingTraps('screw')).toEqual([])
})

test('each trap stands at a word of the glossary that bears one of the names it speaks of', () => {
  for (const { traps, names, label } of glossary()) {
    for (const trap of traps) {
      const words = [label, ...Object.values(names).flat()].flatMap((name) => name.split(/[\s']+/))
      expect(words.some((word) => trap.toLowerCase().includes(word.toLowerCase()))).toBe(true)
    }
  }
})
