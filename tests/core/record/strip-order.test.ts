import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stripOrder } from '../../../core/record/strip-order.ts'

const step = (part: string, ...after: string[]) => ({ part, after })
const names = (steps: readonly { part: string }[]) => steps.map(({ part }) => part)

describe('the order of taking down', () => {
  it('keeps the list where it can be followed, and mends it where it cannot', () => {
    const { order } = stripOrder([
      step('barrel', 'barrel bridge'),
      step('balance cock'),
      step('barrel bridge', 'balance cock'),
    ])
    expect(names(order)).toEqual(['balance cock', 'barrel bridge', 'barrel'])
  })

  it('takes any steps that wait only for earlier ones, shuffled as they may be, into a sound order', () => {
    const steps = fc
      .array(fc.array(fc.nat(), { maxLength: 4 }), { minLength: 1, maxLength: 30 })
      .map((waits) =>
        waits.map((before, at) => step(`part ${at}`, ...(at === 0 ? [] : before.map((each) => `part ${each % at}`)))),
      )
      .chain((made) => fc.shuffledSubarray(made, { minLength: made.length }))
    fc.assert(
      fc.property(steps, (listed) => {
        const { order, loop, looseEnds, twice } = stripOrder(listed)
        expect({ loop, looseEnds, twice }).toEqual({ loop: [], looseEnds: [], twice: [] })
        expect(names(order).toSorted()).toEqual(names(listed).toSorted())
        order.forEach(({ after = [] }, at) => {
          const before = names(order.slice(0, at))
          for (const part of after) expect(before).toContain(part)
        })
      }),
    )
  })

  it('follows a very long chain listed from its end', () => {
    const steps = Array.from({ length: 20_000 }, (_, at) =>
      step(`part ${at}`, ...(at < 19_999 ? [`part ${at + 1}`] : [])),
    )
    expect(stripOrder(steps).order).toHaveLength(20_000)
  })
})

describe('what is in its way', () => {
  it('is a loop, named part by part', () => {
    const { order, loop } = stripOrder([step('dial'), step('a', 'dial', 'c'), step('b', 'a'), step('c', 'b')])
    expect(order).toEqual([])
    expect(loop).toHaveLength(4)
    expect(loop[0]).toBe(loop.at(-1))
    const before = new Map([
      ['a', 'c'],
      ['b', 'a'],
      ['c', 'b'],
    ])
    loop.slice(1).forEach((part, at) => {
      expect(before.get(part)).toBe(loop[at])
    })
  })

  it('is a part that comes after itself', () => {
    expect(stripOrder([step('Click', 'cliquet')]).loop).toEqual(['Click', 'Click'])
  })

  it('is a part without a step, and one with two', () => {
    expect(stripOrder([step('barrel', 'barrel bridge')]).looseEnds).toEqual([
      { part: 'barrel', after: 'barrel bridge' },
    ])
    expect(stripOrder([step('Click'), step('dial'), step('Sperrkegel')]).twice).toEqual(['Sperrkegel'])
    expect(stripOrder([step('cock'), step('coq')]).twice).toEqual([])
  })
})

it.each([
  ['balance cock', 'Balance-Cock'],
  ['cliquet', 'click'],
  ['balance and cock', 'balance'],
  ['pallet cock; pallets', 'pallets'],
  ['Großbodenrad', 'centre wheel'],
])('a step for %s answers to %s', (part, name) => {
  expect(stripOrder([step(part), step('other', name)]).looseEnds).toEqual([])
})
