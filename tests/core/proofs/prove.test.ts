import fc from 'fast-check'
import { expect, it } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { proofs } from '../../../core/proofs/index.ts'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const outcomes = (values: CaliberValues) =>
  Object.fromEntries(proveCaliber(caliberOf(values)).map(({ proof, judgement }) => [proof.id, judgement.outcome]))

it('finds nothing but what is missing in a blank caliber', () => {
  expect(new Set(Object.values(outcomes({})))).toEqual(new Set(['cannot-check']))
  expect(Object.keys(outcomes({}))).toEqual(
    proofs.filter(({ appliesTo }) => appliesTo?.({}, {}) !== false).map(({ id }) => id),
  )
})

it('names every count of the train in a caliber that states only its rate', () => {
  const [rate] = proveCaliber(caliberOf({ beatRateVph: 18000 }))
  expect(rate?.judgement).toEqual({
    outcome: 'cannot-check',
    missing: ['centreWheel', 'thirdPinion', 'thirdWheel', 'escapePinion', 'escapeTeeth', 'fourthPinion', 'fourthWheel'],
  })
})

it('leaves out the seconds hand where there is none', () => {
  expect(outcomes({ secondsDisplay: 'none' })).not.toHaveProperty('seconds-hand-turns-once-a-minute')
})

it('answers outside-range, with the reason, where a formula refuses its figures', () => {
  const values = { barrelInsideMm: 9, barrelArborMm: 9.5, springThicknessMm: 0.1, springLengthMm: 300 }
  const found = proveCaliber(caliberOf({ ...values, goingHours: 36, barrelTeeth: 80, centrePinion: 10 }))
  const byId = new Map(found.map(({ proof, judgement }) => [proof.id, judgement]))
  for (const id of ['spring-fills-barrel', 'going-hours-follow-spring']) {
    expect(byId.get(id)).toMatchObject({ outcome: 'outside-range', reason: 'arbor-fills-barrel' })
  }
})

it('answers outside-range for the hours of a spring that cannot be got in', () => {
  const barrel = { barrelInsideMm: 9, barrelArborMm: 3, springThicknessMm: 0.1, springLengthMm: 900 }
  const found = outcomes({ ...barrel, goingHours: 36, barrelTeeth: 80, centrePinion: 10 })
  expect(found).toMatchObject({ 'spring-fills-barrel': 'disagrees', 'going-hours-follow-spring': 'outside-range' })
})

it('never throws on any possible values', () => {
  const measured = Object.entries(caliberFields).flatMap(([key, field]) => {
    if (!('possible' in field)) return []
    const [min, max] = field.possible
    const whole = field.kind === 'count' || field.kind === 'year'
    return [[key, whole ? fc.integer({ min: Math.ceil(min), max }) : fc.double({ min, max, noNaN: true })] as const]
  })
  const arbitrary = fc.record(Object.fromEntries(measured), { requiredKeys: [] })
  fc.assert(
    fc.property(
      arbitrary,
      fc.constantFrom('small', 'centre-direct', 'centre-indirect', undefined),
      (values, seconds) => {
        const found = proveCaliber(caliberOf({ ...values, ...(seconds && { secondsDisplay: seconds }) }))
        expect(found).toHaveLength(proofs.filter(({ appliesTo }) => appliesTo?.(values, {}) !== false).length)
      },
    ),
  )
})
