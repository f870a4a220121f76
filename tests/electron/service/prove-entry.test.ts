import { expect, test } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { placeInCaliber, proveEntry, sayProblem } from '../../../electron/service/prove-entry.ts'

// An 18 000 train: 80/10 × 75/10 × 80/8 × 2 × 15.
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
const entryOf = (fields: Record<string, string>, more: object = {}) => ({
  ...blankEntry(),
  maker: 'Verrin',
  designation: '17-220',
  fields: Object.fromEntries(Object.entries(fields).map(([key, printed]) => [key, [{ printed, chosen: true }]])),
  ...more,
})

test('what disagrees and what is doubtful is counted', () => {
  expect(proveEntry(entryOf(train))).toMatchObject({ disagree: 0, doubtful: 0, problems: [] })
  expect(proveEntry(entryOf({ ...train, thirdWheel: '90' }))).toMatchObject({ disagree: 1, doubtful: 0 })
  expect(proveEntry(entryOf({ ...train, beatRateVph: '18 040' }))).toMatchObject({ disagree: 0, doubtful: 1 })
  expect(proveEntry(entryOf({}))).toMatchObject({ disagree: 0, doubtful: 0 })
})

test('the counts follow the owner, where the finding is still the one that was overruled', () => {
  const counted = (thirdWheel: string, severity: string, more: object = {}) => {
    const overrule = { proof: 'beat-rate-follows-train', severity, reason: 'Seen.', of: 'disagrees', ...more }
    const { disagree, doubtful } = proveEntry(entryOf({ ...train, thirdWheel }, { overrules: [overrule] }))
    return [disagree, doubtful]
  }
  expect(counted('90', 'accepted')).toEqual([0, 0])
  expect(counted('90', 'doubtful')).toEqual([0, 1])
  expect(counted('90', 'accepted', { of: 'doubtful' })).toEqual([1, 0])
  expect(counted('90', 'accepted', { proof: 'some-later-proof' })).toEqual([1, 0])
  expect(counted('75', 'wrong')).toEqual([0, 0])
})

test('each problem has its place in the file and its sentence', () => {
  const jewels = [{ place: 'balance', kind: 'hole', count: 'some' }]
  const { problems } = proveEntry(entryOf({ thirdWheel: 'many' }, { maker: '', jewels }))
  expect(problems.map(placeInCaliber).sort()).toEqual(['fields.thirdWheel', 'jewels[0].count', 'maker'])
  const said = Object.fromEntries(problems.map((problem) => [placeInCaliber(problem), sayProblem(problem)]))
  expect(said['fields.thirdWheel']).toMatch(/^Third wheel: .*many.*\.$/)
  expect(said['jewels[0].count']).toMatch(/^Jewels.*, line 1, count: .*some.*\.$/)
  expect(said.maker).toMatch(/^Maker: .*\.$/)
})
