import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { misprintHelp } from '../../../core/proofs/misprint-help.ts'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const helpOf = (id: string, caliber: Caliber) => {
  const finding = proveCaliber(caliber).find(({ proof }) => proof.id === id)
  return finding === undefined ? [] : misprintHelp(finding, caliber)
}
const watchWith = (fields: Partial<Record<CaliberFieldKey, string>>) => caliberPrinted({ ...soundWatch, ...fields })

it('finds third wheel 75 for 57 first, and what it gives', () => {
  expect(helpOf('beat-rate-follows-train', watchWith({ thirdWheel: '57' }))[0]).toEqual({
    field: 'thirdWheel',
    printed: '57',
    meant: '75',
    slip: 'digits-exchanged',
    found: 18000,
    unit: 'vph',
    changesFound: true,
  })
})

it('finds a stated rate that was misread', () => {
  expect(helpOf('beat-rate-follows-train', watchWith({ beatRateVph: '18 600' }))[0]).toMatchObject({
    field: 'beatRateVph',
    meant: '18 000',
    changesFound: false,
  })
})

it('finds 0,18 for 0,81 and a decimal mark one place off', () => {
  expect(helpOf('spring-fills-barrel', watchWith({ springThicknessMm: '0,81' }))[0]).toMatchObject({ meant: '0,18' })
  expect(helpOf('spring-fills-barrel', watchWith({ springThicknessMm: '1,8' }))).toContainEqual(
    expect.objectContaining({ field: 'springThicknessMm', meant: '0,18' }),
  )
})

it('finds a neighbouring count of leaves', () => {
  const help = helpOf('beat-rate-follows-train', watchWith({ escapePinion: '7' }))
  expect(help).toContainEqual(expect.objectContaining({ field: 'escapePinion', meant: '8', slip: 'neighbour' }))
})

it('passes over what would put another proof wrong', () => {
  // A centre wheel of 40 for the 80 would mend the rate of an escape pinion of 4, and no seconds hand would go round.
  const help = helpOf('beat-rate-follows-train', watchWith({ escapePinion: '10' }))
  for (const { field } of help) expect(['escapePinion', 'escapeTeeth', 'beatRateVph', 'fourthWheel']).toContain(field)
})

it('keeps silent where nothing disagrees and where no field is at fault', () => {
  for (const finding of proveCaliber(watchWith({}))) expect(misprintHelp(finding, watchWith({}))).toEqual([])
  expect(helpOf('sources-agree', caliberPrinted({ thirdWheel: ['57', '75'] }))).toEqual([])
})

it('reads values that have no print', () => {
  const caliber = watchWith({ thirdWheel: '57' })
  expect(helpOf('beat-rate-follows-train', { ...caliber, readings: {} })[0]).toMatchObject({ meant: '75' })
})

it('offers at most five, and each of them makes the proof agree', () => {
  const counts = ['centreWheel', 'thirdPinion', 'thirdWheel', 'fourthWheel', 'escapePinion', 'hourWheel'] as const
  fc.assert(
    fc.property(fc.constantFrom(...counts), fc.integer({ min: 6, max: 99 }), (key, count) => {
      const caliber = watchWith({ [key]: String(count) })
      for (const finding of proveCaliber(caliber)) {
        const help = misprintHelp(finding, caliber)
        expect(help.length).toBeLessThanOrEqual(5)
        for (const { field, meant } of help) {
          const mended = proveCaliber(watchWith({ [key]: String(count), [field]: meant }))
          expect(mended.find(({ proof }) => proof === finding.proof)?.judgement.outcome).toBe('agrees')
        }
      }
    }),
    { numRuns: 60 },
  )
})
