import { expect, it } from 'vitest'
import { variantKeepsItsBase as proof } from '../../../core/proofs/variant-keeps-its-base.ts'
import { inherit } from '../../../core/record/inherit.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const base = caliberPrinted(soundWatch)
const variantWith = (fields: Readonly<Record<string, string>>) =>
  inherit(caliberPrinted({ basedOn: '1', ...fields }, { maker: 'Verrin', designation: '2' }), base)

it('says nothing of a caliber that is based on none', () => {
  expect(proof.appliesTo?.(base.values, base.readings)).toBe(false)
})

it('cannot be checked without the base', () => {
  expect(proof.judge(caliberPrinted({ basedOn: '1' }))).toEqual({ outcome: 'cannot-check', missing: ['basedOn'] })
})

it('agrees where the stated train and barrel are the same, however they are printed', () => {
  expect(proof.judge(variantWith({ thirdWheel: '75', barrelInsideMm: '16' }))).toMatchObject({
    outcome: 'agrees',
    reason: 'base-kept',
    fields: ['basedOn', 'thirdWheel', 'barrelInsideMm'],
  })
})

it('agrees where nothing of it is stated, since all is inherited', () => {
  expect(proof.judge(variantWith({}))).toMatchObject({ outcome: 'agrees', reason: 'base-unstated' })
})

it('doubts each count and size that differs, and names it', () => {
  const found = proof.judge(variantWith({ fourthWheel: '70', barrelInsideMm: '16,1', thirdWheel: '75' }))
  expect(found).toMatchObject({
    outcome: 'doubtful',
    reason: 'base-differs',
    fields: ['basedOn', 'fourthWheel', 'barrelInsideMm'],
    working: [
      { formula: '70 − 80', gives: -10, where: { field: 'fourthWheel', variant: '70', base: '80' } },
      { where: { field: 'barrelInsideMm', variant: '16,1', base: '16,0' } },
    ],
  })
})

it('does not compare spring, motion work or what the base does not state', () => {
  const variant = variantWith({ springLengthMm: '300', hourWheel: '64', intermediateWheel: '60' })
  expect(proof.judge(variant).outcome).toBe('agrees')
})

it('reads values without a print', () => {
  const bare = inherit(
    { ...caliberPrinted({ basedOn: '1', fourthWheel: '70' }), readings: {} },
    { ...base, readings: {} },
  )
  expect(proof.judge(bare)).toMatchObject({ outcome: 'doubtful', working: [{ where: { variant: '70', base: '80' } }] })
})

it('says how many were compared with which base, and gives no figure of its own', () => {
  expect(proof.judge(variantWith({ thirdWheel: '75', barrelInsideMm: '16' }))).toMatchObject({
    stated: null,
    found: null,
    unit: '',
    difference: null,
    allowed: null,
    working: [],
    details: { basedOn: '1', compared: 2 },
  })
})
