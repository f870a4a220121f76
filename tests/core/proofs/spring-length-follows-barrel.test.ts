import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bestSpringLength } from '../../../core/formulas/barrel.ts'
import { springFillsBarrel } from '../../../core/proofs/spring-fills-barrel.ts'
import { springLengthFollowsBarrel as proof } from '../../../core/proofs/spring-length-follows-barrel.ts'
import { caliberOf } from '../../support/caliber-of.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

const barrel = { barrelInsideMm: 12, barrelArborMm: 4, springThicknessMm: 0.12 }
const best = bestSpringLength(barrel)
const long = (share: number) => caliberOf({ ...barrel, springLengthMm: share * best })

// The best length holds π, so no length that can be printed lies on an edge; the edges are met from both sides.
it.each([
  [0.6599, 'disagrees', 'length-short'],
  [0.6601, 'doubtful', 'length-short'],
  [0.7999, 'doubtful', 'length-short'],
  [0.8001, 'agrees', 'length-best'],
  [1, 'agrees', 'length-best'],
  [1.1999, 'agrees', 'length-best'],
  [1.2001, 'doubtful', 'length-long'],
  [1.3399, 'doubtful', 'length-long'],
  [1.3401, 'disagrees', 'length-long'],
  [1.9999, 'disagrees', 'length-long'],
  [2.0001, 'disagrees', 'length-over'],
])('%d of the best length %s', (share, outcome, reason) => {
  expect(proof.judge(long(share))).toMatchObject({ outcome, reason })
})

it('says how many millimetres and turns the length is off', () => {
  expect(proof.judge(caliberOf({ ...barrel, springLengthMm: 400 }))).toMatchObject({
    stated: 400,
    found: expect.closeTo(418.879, 3),
    difference: expect.closeTo(18.879, 3),
    allowed: expect.closeTo(83.776, 3),
    working: [
      { formula: 'π × (12² − 4²) ÷ (8 × 0.12)', gives: expect.closeTo(418.879, 3) },
      { formula: '418.879 − 400', gives: expect.closeTo(18.879, 3) },
      { formula: '7.869 − 7.857', gives: expect.closeTo(0.0121, 3) },
    ],
    details: { lostPercent: expect.closeTo(0.154, 2) },
  })
})

it('names the thickness that would suit a length that is off', () => {
  const judgement = proof.judge(
    caliberOf({ barrelInsideMm: 16, barrelArborMm: 5, springThicknessMm: 0.81, springLengthMm: 480 }),
  )
  expect(judgement).toMatchObject({ reason: 'length-over', details: { suitingThicknessMm: expect.closeTo(0.189, 3) } })
  expect('working' in judgement && judgement.working.at(-1)?.formula).toBe('π × (16² − 5²) ÷ (8 × 480)')
})

it('takes a slipping bridle off the barrel, and no other end', () => {
  const spring = { ...barrel, springLengthMm: 400, bridleThicknessMm: 0.5 }
  expect(proof.judge(caliberOf({ ...spring, springEnd: 'slipping-bridle' }))).toMatchObject({
    found: expect.closeTo((Math.PI * (11 ** 2 - 4 ** 2)) / (8 * 0.12), 9),
    working: [{ where: { barrelInsideMm: 12, insideWithinBridleMm: 11 } }, {}, {}],
  })
  expect(proof.judge(caliberOf({ ...spring, springEnd: 'tongue' }))).toMatchObject({ found: best })
})

it('comes to the same outcome as the room that the spring takes', () => {
  const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  fc.assert(
    fc.property(
      mm(5, 30),
      mm(0.15, 0.6),
      mm(0.05, 0.3),
      mm(20, 900),
      (barrelInsideMm, hub, springThicknessMm, length) => {
        const caliber = caliberOf({
          barrelInsideMm,
          barrelArborMm: barrelInsideMm * hub,
          springThicknessMm,
          springLengthMm: length,
        })
        expect(proof.judge(caliber).outcome).toBe(springFillsBarrel.judge(caliber).outcome)
      },
    ),
  )
})

everyNeedIsNamed(proof, { ...barrel, springLengthMm: 400 }, [
  'barrelInsideMm',
  'barrelArborMm',
  'springThicknessMm',
  'springLengthMm',
])

it('speaks of a bridle only where there is one, whatever the barrel was printed in', () => {
  const sizes = { barrelInsideMm: "7'''", barrelArborMm: "2'''", springThicknessMm: '0,16', springLengthMm: '540' }
  const where = (more: Readonly<Record<string, string>>) => {
    const judgement = proof.judge(caliberPrinted({ ...sizes, ...more }))
    return 'working' in judgement ? judgement.working[0]?.where : undefined
  }
  expect(where({})).not.toHaveProperty('insideWithinBridleMm')
  expect(where({ springEnd: 'slipping bridle', bridleThicknessMm: '0,12' })).toHaveProperty('insideWithinBridleMm')
})

it('says of a length that is far off which thickness would suit it', () => {
  // π × (12² − 4²) ÷ (8 × 0.12) is 419 mm; 209.4 mm would want a strip of twice the thickness.
  expect(proof.judge(caliberOf({ ...barrel, springLengthMm: 209.4395 }))).toMatchObject({
    outcome: 'disagrees',
    reason: 'length-short',
    working: [
      {},
      {},
      {},
      {
        formula: 'π × (12² − 4²) ÷ (8 × 209.4395)',
        where: { springLengthMm: 209.4395, suits: 'springThicknessMm' },
        gives: expect.closeTo(0.24, 6),
      },
    ],
  })
})
