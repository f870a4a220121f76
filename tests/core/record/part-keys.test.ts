import { expect, it } from 'vitest'
import { foldedNamesOf, partKeys } from '../../../core/record/part-keys.ts'

it.each([
  ['Ratchet wheel', ['ratchetWheel']],
  ['CLIQUET', ['click']],
  ['großbodenrad', ['centreWheel']],
  ['brug', ['bridge', 'cock']],
  ['thingummy', []],
])('%s stands for %j', (name, keys) => {
  expect(partKeys(name)).toEqual(keys)
})

it('folds every name of a part once', () => {
  const names = foldedNamesOf(['barrel', 'thirdWheel'])
  expect(names).toEqual(expect.arrayContaining(['barrel', 'barillet', 'federhaus', 'veerhuis', 'kleinbodenrad']))
  expect(new Set(names).size).toBe(names.length)
})
