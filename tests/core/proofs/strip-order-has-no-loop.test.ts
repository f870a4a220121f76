import { expect, it } from 'vitest'
import { stripOrderHasNoLoop as proof } from '../../../core/proofs/strip-order-has-no-loop.ts'
import type { StripStep } from '../../../core/record/caliber.ts'
import { caliberWithLists } from '../../support/caliber-with-lists.ts'

const judge = (...stripOrder: readonly StripStep[]) => proof.judge(caliberWithLists({ stripOrder }))
const letDown: StripStep = { part: 'mainspring let down' }

it('agrees where the steps can be followed, and writes the order down', () => {
  expect(
    judge(
      letDown,
      { part: 'barrel bridge', after: ['Mainspring let down'] },
      { part: 'barrel', after: ['barrel bridge'] },
    ),
  ).toMatchObject({
    outcome: 'agrees',
    reason: 'strip-sound',
    stated: 3,
    found: 3,
    working: [{ formula: 'mainspring let down → barrel bridge → barrel', gives: '3 steps in order' }],
    details: { asListed: 'yes' },
  })
  expect(judge({ part: 'barrel', after: ['mainspring let down'] }, letDown)).toMatchObject({
    outcome: 'agrees',
    working: [{ formula: 'mainspring let down → barrel' }],
    details: { asListed: 'no' },
  })
})

it('disagrees with a loop and names it part by part', () => {
  const loop = judge(
    letDown,
    { part: 'pallets', after: ['balance cock'] },
    { part: 'balance cock', after: ['Pallets'] },
  )
  expect(loop).toMatchObject({
    outcome: 'disagrees',
    reason: 'strip-loop',
    found: 0,
    working: [{ formula: 'pallets → balance cock → pallets', gives: 'a loop' }],
    details: { parts: 2 },
  })
  expect(judge({ part: 'dial', after: ['dial'] })).toMatchObject({
    outcome: 'disagrees',
    details: { parts: 1, part: 'dial' },
  })
})

it('doubts a mainspring that is not let down in time, first of all', () => {
  const bridge = { part: 'barrel bridge', after: ['train bridge'] }
  expect(judge(bridge)).toMatchObject({
    outcome: 'doubtful',
    reason: 'strip-not-let-down',
    details: { part: 'barrel bridge' },
  })
  expect(judge({ part: 'barrel bridge' }, letDown)).toMatchObject({ reason: 'strip-not-let-down' })
  expect(judge({ part: 'barrel bridge', caution: 'Let down the mainspring first: let it down slowly.' })).toMatchObject(
    {
      outcome: 'agrees',
    },
  )
})

it('doubts a part without its own step and a part with two', () => {
  expect(judge({ part: 'pallets', after: ['balance cock', 'pallet cock'] })).toMatchObject({
    outcome: 'doubtful',
    reason: 'strip-loose-end',
    details: { part: 'pallets', after: 'balance cock', more: 1 },
  })
  expect(judge({ part: 'dial' }, { part: 'Zifferblatt' })).toMatchObject({
    outcome: 'doubtful',
    reason: 'strip-twice',
    details: { part: 'Zifferblatt' },
  })
})

it('cannot be checked without a strip order', () => {
  expect(judge()).toEqual({ outcome: 'cannot-check', missing: ['stripOrder'] })
})

it('counts steps, and is not as listed where a single one moves', () => {
  expect(judge(letDown, { part: 'barrel', after: ['barrel bridge'] }, { part: 'barrel bridge' })).toMatchObject({
    outcome: 'agrees',
    unit: 'steps',
    working: [{ formula: 'mainspring let down → barrel bridge → barrel' }],
    details: { asListed: 'no' },
  })
})

it('names the whole loop', () => {
  expect(judge({ part: 'pallets', after: ['cock'] }, { part: 'cock', after: ['pallets'] })).toMatchObject({
    unit: 'steps',
    details: { part: 'pallets', loop: 'pallets → cock → pallets' },
  })
})
