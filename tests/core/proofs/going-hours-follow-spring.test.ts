import { expect, it } from 'vitest'
import { goingHoursFollowSpring as proof } from '../../../core/proofs/going-hours-follow-spring.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { caliberOf, without } from '../../support/caliber-of.ts'
import { everyNeedIsNamed } from '../../support/every-need-is-named.ts'

/** 7.8568 turns of 6 h: 47.14 h of development. */
const watch: CaliberValues = {
  goingHours: 40,
  barrelTeeth: 72,
  centrePinion: 12,
  barrelInsideMm: 12,
  barrelArborMm: 4,
  springThicknessMm: 0.12,
  springLengthMm: 400,
}
const judge = (values: CaliberValues) => proof.judge(caliberOf({ ...watch, ...values }))

it.each([
  [31, 'disagrees', 'hours-over'],
  [32, 'doubtful', 'hours-over'],
  [39, 'doubtful', 'hours-over'],
  [40, 'agrees', 'hours-agree'],
  [47.1, 'agrees', 'hours-agree'],
  [48.1, 'agrees', 'hours-agree'],
  [48.2, 'doubtful', 'hours-short'],
  [49.6, 'doubtful', 'hours-short'],
  [49.7, 'disagrees', 'hours-short'],
])('%d stated hours against a development of 47.14 h: %s', (goingHours, outcome, reason) => {
  expect(judge({ goingHours })).toMatchObject({ outcome, reason, details: { limit: 'spring' } })
})

const stopped = { barrelTeeth: 80, centrePinion: 10, stopWorkTurns: 5 }
it.each([
  [40, 'agrees'],
  [40.5, 'agrees'],
  [39.5, 'agrees'],
  [40.6, 'doubtful'],
  [42.1, 'doubtful'],
  [42.2, 'disagrees'],
  [38.1, 'doubtful'],
  [38, 'disagrees'],
])('%d stated hours against 40 h of stop work: %s', (goingHours, outcome) => {
  expect(judge({ ...stopped, goingHours })).toMatchObject({ outcome, found: 40, details: { limit: 'stop-work' } })
  expect(proof.judge(caliberOf({ ...stopped, goingHours }))).toMatchObject({ outcome, found: 40 })
})

it('lets the spring limit the turns where the stop work allows more', () => {
  expect(judge({ stopWorkTurns: 9 })).toMatchObject({ outcome: 'agrees', details: { limit: 'spring' } })
})

it('goes through an intermediate pair and slower centre arbors', () => {
  const long = { barrelTeeth: 96, intermediatePinion: 12, intermediateWheel: 48, centrePinion: 12, stopWorkTurns: 6 }
  expect(judge({ ...long, goingHours: 192 })).toMatchObject({ outcome: 'agrees', found: 192 })
  expect(judge({ ...stopped, hoursPerCentreTurn: 2, goingHours: 80 })).toMatchObject({ outcome: 'agrees', found: 80 })
})

it('takes a slipping bridle off the barrel', () => {
  const bridled = judge({ springEnd: 'slipping-bridle', bridleThicknessMm: 0.15 })
  const bare = judge({})
  expect('found' in bridled && 'found' in bare && Number(bridled.found) < Number(bare.found)).toBe(true)
  // The field says 12 mm; two bridles of 0.15 leave 11.7 to the coils.
  expect(bridled).toMatchObject({ working: [{ where: { barrelInsideMm: 12, insideWithinBridleMm: 11.7 } }, {}, {}] })
  expect('working' in bare && bare.working[0]?.where).not.toHaveProperty('insideWithinBridleMm')
})

everyNeedIsNamed(proof, watch, [
  'goingHours',
  'barrelTeeth',
  'centrePinion',
  'barrelInsideMm',
  'barrelArborMm',
  'springThicknessMm',
  'springLengthMm',
])
everyNeedIsNamed(proof, { ...watch, barrelTeeth: 36, intermediatePinion: 10, intermediateWheel: 20 }, [
  'intermediatePinion',
  'intermediateWheel',
])

it.each(['barrelInsideMm', 'barrelArborMm', 'springThicknessMm', 'springLengthMm'] as const)(
  'goes by the stop work alone where %s is not stated',
  (key) => {
    const judgement = proof.judge(caliberOf({ ...without({ ...watch, ...stopped }, key), goingHours: 40 }))
    expect(judgement).toMatchObject({ outcome: 'agrees', found: 40, details: { limit: 'stop-work', turns: 5 } })
    expect(judgement).toHaveProperty('working.length', 2)
  },
)

it.each([
  [1, 'doubtful', 'hours-over'],
  [1.125, 'disagrees', 'hours-over'],
])('%d h of stated hours less than the stop work gives, of 20 to an edge of 5 %%: %s', (less, outcome, reason) => {
  // 80/10 hours a turn: 2.625 and 2.640625 turns are 21 and 21.125 h.
  const stopWorkTurns = (20 + less) / 8
  expect(judge({ ...stopped, stopWorkTurns, goingHours: 20 })).toMatchObject({ outcome, reason, found: 20 + less })
})
