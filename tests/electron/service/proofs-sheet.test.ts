import { afterEach, beforeEach, expect, test } from 'vitest'
import type { CallOutput } from '../../../core/api/contract.ts'
import { entryOf } from '../../support/temporary-library.ts'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
beforeEach(async () => {
  library = await openTestLibrary()
})
afterEach(() => library.close())

const train = {
  beatRateVph: '18 000',
  centreWheel: '80',
  thirdPinion: '10',
  thirdWheel: '75',
  fourthPinion: '10',
  fourthWheel: '80',
  escapePinion: '8',
  escapeTeeth: '15',
}
/** The train gives 18 000, a customary rate, so that this proof alone finds something. */
const wrong = { ...train, beatRateVph: '21 600' }
const save = (designation: string, fields: Record<string, string>, more: object = {}) =>
  library.call('caliber.save', { caliberId: null, entry: entryOf('Verrin', designation, fields, more) })

const rateCounts = ({ counts }: CallOutput<'proofs.sheet'>) =>
  Object.fromEntries(
    counts.filter(({ proof }) => proof === 'beat-rate-follows-train').map(({ standing, count }) => [standing, count]),
  )

test('a stretch is proved: what weighs is answered in full, the rest is counted', async () => {
  await save('10', train)
  await save('9', wrong)
  await save('11', {})
  const sheet = await library.call('proofs.sheet', { offset: 0, limit: 500 })
  expect(sheet.total).toBe(3)
  expect(sheet.calibers).toEqual({ wrong: 1, doubtful: 0, sound: 1, unproved: 1 })
  expect(rateCounts(sheet)).toEqual({ wrong: 1, agrees: 1, 'cannot-check': 1 })
  expect(sheet.lines).toMatchObject([
    { maker: 'Verrin', designation: '9', proof: 'beat-rate-follows-train', severity: 'wrong', field: 'beatRateVph' },
  ])
})

test('stretches in the order of the list make up the whole, and past its end there is nothing', async () => {
  for (const designation of ['10', '9', '11']) await save(designation, wrong)
  const whole = await library.call('proofs.sheet', { offset: 0, limit: 3 })
  const stretches = [
    await library.call('proofs.sheet', { offset: 0, limit: 2 }),
    await library.call('proofs.sheet', { offset: 2, limit: 2 }),
  ]
  expect(whole.lines.map(({ designation }) => designation)).toEqual(['9', '10', '11'])
  expect(stretches.flatMap(({ lines }) => lines)).toEqual(whole.lines)
  expect(await library.call('proofs.sheet', { offset: 3, limit: 2 })).toEqual({
    total: 3,
    calibers: { wrong: 0, doubtful: 0, sound: 0, unproved: 0 },
    counts: [],
    lines: [],
  })
})

test('what cannot be checked is answered in full where it is asked for', async () => {
  await save('10', { beatRateVph: '18 000' })
  const without = await library.call('proofs.sheet', { offset: 0, limit: 1 })
  expect(without.lines).toEqual([])
  const { lines, counts } = await library.call('proofs.sheet', { offset: 0, limit: 1, unchecked: true })
  expect(counts).toEqual(without.counts)
  expect(lines).toContainEqual(
    expect.objectContaining({ proof: 'beat-rate-follows-train', outcome: 'cannot-check', field: 'centreWheel' }),
  )
})

test('a variant is proved over its base', async () => {
  await save('10', train)
  await save('10 B', { basedOn: '10', thirdWheel: '57' })
  const { lines } = await library.call('proofs.sheet', { offset: 0, limit: 10 })
  expect(lines).toContainEqual(
    expect.objectContaining({ designation: '10 B', proof: 'beat-rate-follows-train', field: 'thirdWheel' }),
  )
})

test('an accepted finding stays in sight and weighs nothing', async () => {
  const overrules = [
    { proof: 'beat-rate-follows-train', severity: 'accepted', reason: 'Beats so.', of: 'disagrees' } as const,
  ]
  await save('10', wrong, { overrules })
  const sheet = await library.call('proofs.sheet', { offset: 0, limit: 10 })
  expect(sheet.calibers).toMatchObject({ wrong: 0, sound: 1 })
  expect(rateCounts(sheet)).toEqual({ accepted: 1 })
  expect(sheet.lines).toMatchObject([{ severity: 'accepted', overruled: 'Accepted: Beats so.' }])
})

test('a stretch is no longer than asked for, and not longer than allowed', async () => {
  await expect(library.call('proofs.sheet', { offset: 0, limit: 501 })).rejects.toThrow()
})
