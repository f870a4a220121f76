import { expect, it } from 'vitest'
import { notLetDownBefore } from '../../../core/record/let-down.ts'

const steps = (...parts: string[]) => parts.map((part) => ({ part }))

it.each([
  'barrel bridge',
  'ratchet wheel',
  'click',
  'Sperrkegel',
  'pont de barillet',
  'Federhausbrücke',
  'veerton',
  'pal',
])('nothing said before %s comes off is found', (part) => {
  expect(notLetDownBefore(steps('hands', part))).toEqual({ part })
})

it.each([
  'mainspring let down',
  'Let the mainspring down',
  'letting down',
  'ressort désarmé',
  'détendre le ressort',
  'Zugfeder entspannen',
  'trekveer ontspannen',
])('“%s” lets it down, as a step or in a caution', (words) => {
  expect(notLetDownBefore(steps(words, 'barrel bridge'))).toBeUndefined()
  expect(notLetDownBefore([{ part: 'barrel bridge', caution: `${words}.` }])).toBeUndefined()
  expect(notLetDownBefore(steps('barrel bridge', words))).toEqual({ part: 'barrel bridge' })
})

it('asks for nothing where no part under power comes off', () => {
  expect(notLetDownBefore(steps('hands', 'pallets', 'balance cock'))).toBeUndefined()
})
