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

/** Every help, the likeliest first, by field, what may have been meant, and how. */
const helps = (id: string, caliber: Caliber) =>
  helpOf(id, caliber).map(({ field, meant, slip }) => `${field} ${meant} ${slip}`)

it('offers a wheel a few teeth off before any digit that is not alike', () => {
  // 74 for 75: the 4 and the 5 are not alike, but a tooth is soon counted too few.
  expect(helps('beat-rate-follows-train', watchWith({ thirdWheel: '74' }))).toEqual(['thirdWheel 75 neighbour'])
})

it('puts a digit misread before one that is not alike, whichever field comes first', () => {
  // Two ways from 19 200 to 18 000 without a seconds hand: 15 escape teeth for 16, or a centre wheel of 60 for 64.
  const fields = { secondsDisplay: 'none', centreWheel: '64', thirdPinion: '8', escapeTeeth: '16' }
  expect(helps('beat-rate-follows-train', watchWith(fields))).toEqual([
    'escapeTeeth 15 digit-misread',
    'centreWheel 60 other-digit',
  ])
})

it('puts a count that is usual before one that is not', () => {
  // Half the rate: a pinion of 14 for one of 7 is usual for the fourth, which has up to 16, and not for the escape.
  const fields = { secondsDisplay: 'none', thirdWheel: '70', fourthPinion: '7', fourthWheel: '84', escapePinion: '7' }
  expect(helps('beat-rate-follows-train', watchWith({ ...fields, beatRateVph: '14 400' }))).toEqual([
    'fourthPinion 14 neighbour',
    'escapePinion 14 neighbour',
    'centreWheel 40 other-digit',
    'thirdPinion 20 other-digit',
  ])
})

it('puts what cures another proof as well before what cures this one alone', () => {
  // A fourth pinion of 8 for 10 spoils rate and seconds hand; other escape counts would mend the rate alone.
  expect(helps('beat-rate-follows-train', watchWith({ fourthPinion: '8' }))).toEqual([
    'fourthPinion 10 neighbour',
    'escapePinion 10 neighbour',
    'escapeTeeth 12 neighbour',
  ])
})

it('puts the nearer of two like slips first, and offers no value twice', () => {
  // Too long for the barrel. A strip of 0.08 would bend too easily round its hub, so that proof would be the worse for it.
  const barrel = { barrelInsideMm: '16', barrelArborMm: '5', springThicknessMm: '0,18', springLengthMm: '980' }
  expect(helps('spring-fills-barrel', caliberPrinted(barrel))).toEqual([
    'springThicknessMm 0,10 digit-misread',
    'springLengthMm 480 digit-misread',
    'springThicknessMm 0,11 other-digit',
    'springLengthMm 580 other-digit',
  ])
})

it('asks nothing of a proof that says nothing of the movement', () => {
  // Without a seconds hand no arbor need turn sixty times, so either pinion before the escape will do.
  const fields = { secondsDisplay: 'none', escapePinion: '10' }
  expect(helps('beat-rate-follows-train', watchWith(fields))).toEqual([
    'thirdPinion 8 neighbour',
    'escapePinion 8 neighbour',
    'fourthPinion 8 neighbour',
  ])
})

it('offers nothing that would leave a doubt within the printed rounding', () => {
  // 1.19 over 1.18 may be the same hole, to half of the last digit of each; 1.18 over 1.16 is not.
  const offered = helps('hands-fit-in-order', caliberPrinted({ hourHandMm: '1,18', minuteHandMm: '1,18' }))
  expect(offered).toContain('minuteHandMm 1,16 digit-misread')
  expect(offered).not.toContain('hourHandMm 1,19 digit-misread')
})

it('leaves a stated nought alone, for which any figure would be a guess', () => {
  const bare = caliberPrinted({ jewelsStated: '0' })
  const jewels = [{ place: 'balance', kind: 'hole', count: 6 }]
  expect(helps('jewels-add-up', { ...bare, lists: { ...bare.lists, jewels } })).toEqual([])
})
