import { expect, test } from 'vitest'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { inheritFrom } from '../../../core/record/inherit.ts'
import { sheetLine } from '../../../core/wording/sheet-line.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const lineOf = (caliber: Caliber, proof: string) => {
  const finding = proveCaliber(caliber).find((one) => one.proof.id === proof)
  if (finding === undefined) throw new Error(`no finding of ${proof}`)
  return sheetLine(finding, caliber)
}

test('a finding has its sentence, its working and the field to look at first', () => {
  const line = lineOf(caliberPrinted({ ...soundWatch, thirdWheel: '57' }), 'beat-rate-follows-train')
  expect(line).toMatchObject({
    outcome: 'disagrees',
    severity: 'wrong',
    stated: 18000,
    unit: 'vph',
    overruled: null,
    field: 'beatRateVph',
  })
  expect(line.message).toMatch(/^18\u202f000 vibrations an hour is stated; /)
  expect(line.working[0]).toEqual({ formula: expect.stringContaining('57/'), gives: line.found })
})

test('what is missing is the field to look at first', () => {
  const { thirdWheel: _, ...gap } = soundWatch
  const line = lineOf(caliberPrinted(gap), 'beat-rate-follows-train')
  expect(line).toMatchObject({ outcome: 'cannot-check', severity: 'none', field: 'thirdWheel', working: [] })
})

test('a variant is looked at where it departs from its base', () => {
  const base = caliberPrinted(soundWatch)
  const variant = inheritFrom(caliberPrinted({ basedOn: '1', thirdWheel: '57' }), [base])
  expect(lineOf(variant, 'beat-rate-follows-train')).toMatchObject({ outcome: 'disagrees', field: 'thirdWheel' })
})

test('what the owner made of a finding stands beside it', () => {
  const caliber = caliberPrinted({ ...soundWatch, thirdWheel: '57' })
  const overrules = [
    { proof: 'beat-rate-follows-train', severity: 'accepted', reason: 'Beats so', of: 'disagrees' } as const,
  ]
  expect(lineOf({ ...caliber, overrules }, 'beat-rate-follows-train')).toMatchObject({
    outcome: 'disagrees',
    severity: 'accepted',
    overruled: 'Accepted: Beats so.',
  })
})
