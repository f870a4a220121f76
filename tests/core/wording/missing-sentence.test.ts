import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import type { MissingAnswer } from '../../../core/trains/missing-counts.ts'
import {
  countsText,
  decidingSentence,
  missingRemark,
  missingSentence,
  nearestSentence,
  nothingMissingSentence,
  unboundSentence,
  workedOutNote,
} from '../../../core/wording/missing-sentence.ts'

const plain = (text: string) => text.replace(/\u202f/g, ' ')

test('counts stand with their names', () => {
  expect(countsText({ thirdWheel: 75, fourthPinion: 10 })).toBe('third wheel 75, fourth pinion 10')
})

test.each([
  [
    { code: 'unusual-count', key: 'thirdWheel', count: 150, usual: [45, 120] },
    'A third wheel of 150 is unusual; 45 to 120 is usual.',
  ],
  [
    { code: 'unusual-count', key: 'escapeTeeth', count: 30, usual: [13, 21] },
    'Escape teeth of 30 are unusual; 13 to 21 are usual.',
  ],
  [{ code: 'uncommon-leaves', key: 'escapePinion', count: 9 }, 'An escape pinion of 9 leaves is seldom cut.'],
  [
    { code: 'steep-pair', driver: 'fourthWheel', driven: 'escapePinion', ratio: 16 },
    'Fourth wheel and escape pinion stand 16 to one, steep for a single pair.',
  ],
  [
    { code: 'rate-rounded', rate: '17999 4/7', stated: 18000 },
    'The train gives 17999 4/7 an hour, which rounds to the stated 18 000.',
  ],
  [
    { code: 'sizes-differ', driver: 'thirdWheel', driven: 'fourthPinion', share: 0.021, clear: false },
    'The sizes of third wheel and fourth pinion give a ratio 2.1 % greater.',
  ],
  [
    { code: 'sizes-differ', driver: 'thirdWheel', driven: 'fourthPinion', share: -0.333, clear: true },
    'The sizes of third wheel and fourth pinion give a ratio 33.3 % smaller: they speak against these counts, and no other count that is cut suits them.',
  ],
  [
    { code: 'module-by-distance', driver: 'thirdWheel', driven: 'fourthPinion', distanceMm: 5.1, moduleMm: 0.12 },
    'With 5.1 mm between the centres of third wheel and fourth pinion their module is 0.12 mm.',
  ],
  [{ code: 'no-fourth-arbor' }, 'The train is taken to have no fourth arbor.'],
] as const)('the remark %j', (remark, said) => {
  expect(plain(missingRemark(remark))).toBe(said)
})

test('what would decide is said with the figures to look for', () => {
  expect(decidingSentence({ kind: 'count', key: 'fourthPinion', counts: [8, 10], left: 1 })).toBe(
    'Count the fourth pinion: 8, 10; each leaves one answer.',
  )
  const many = Array.from({ length: 12 }, (_, i) => i + 5)
  expect(decidingSentence({ kind: 'count', key: 'fourthPinion', counts: many, left: 3 })).toMatch(
    /13, 14 and so on; 3 answers at most are left\.$/,
  )
  const pairs = [
    { driver: 75, driven: 10, modules: 42.5 },
    { driver: 60, driven: 8, modules: 34 },
  ]
  expect(decidingSentence({ kind: 'distance', driver: 'thirdWheel', driven: 'fourthPinion', pairs, left: 1 })).toBe(
    'Measure between the centres of third wheel and fourth pinion: 42.5 modules for 75/10, 34 modules for 60/8; each leaves one answer. The module is a wheel’s pitch diameter divided by its teeth.',
  )
})

test('a count that cannot be worked out says what is wanting', () => {
  expect(unboundSentence({ key: 'thirdWheel', waitsFor: ['fourthPinion'] })).toBe(
    'Without the fourth pinion the third wheel cannot be worked out. State it, or look for it too.',
  )
  expect(unboundSentence({ key: 'thirdWheel', waitsFor: ['fourthPinion', 'beatRateVph'] })).toBe(
    'Without the fourth pinion and beat rate the third wheel cannot be worked out. State them, or look for them too.',
  )
  expect(unboundSentence({ key: 'barrelTeeth', waitsFor: [] })).toMatch(
    /^Nothing stated binds the barrel teeth: neither /,
  )
  expect(unboundSentence({ key: 'sweepPinion', waitsFor: [] })).toContain(
    'where the seconds display is centre, indirect',
  )
})

test('the nearest counts are told with every error', () => {
  const nearest = {
    counts: { fourthWheel: 65 },
    rate: new Fraction(124800, 7),
    rateErrorSecondsPerDay: -822.857,
    secondsHandErrorSecondsPerDay: null,
    hourHandTurns: null,
  }
  expect(nearestSentence(nearest)).toBe(
    'Fourth wheel 65 gives 17828 4/7 an hour, which is 822.9 s a day less than stated.',
  )
  expect(nearestSentence({ ...nearest, secondsHandErrorSecondsPerDay: 1440 })).toMatch(
    /and a seconds hand that shows 1440 s a day more than stated\.$/,
  )
  const hand = { ...nearest, rate: null, rateErrorSecondsPerDay: null, hourHandTurns: new Fraction(133, 11) }
  expect(nearestSentence(hand)).toBe('Fourth wheel 65 gives a motion work of 12 1/11 to one.')
})

const answer: MissingAnswer = {
  unknown: ['thirdWheel'],
  unbound: [],
  rests: [],
  solutions: [],
  nearest: [],
  decide: [],
  complete: true,
}
const solution = { counts: { thirdWheel: 75 }, rate: new Fraction(18000), remarks: [], working: [] }

test('none, one, several and too many are told apart', () => {
  expect(missingSentence(answer)).toMatch(/^No whole number of teeth that is cut comes near: third wheel\. /)
  const near = {
    counts: {},
    rate: null,
    rateErrorSecondsPerDay: null,
    secondsHandErrorSecondsPerDay: null,
    hourHandTurns: null,
  }
  expect(missingSentence({ ...answer, nearest: [near] })).toMatch(
    /^No whole number of teeth that is cut fits: third wheel\. /,
  )
  expect(missingSentence({ ...answer, solutions: [solution] })).toBe('One answer fits: third wheel 75.')
  const two = [solution, solution]
  expect(missingSentence({ ...answer, solutions: two })).toBe('2 answers fit, the most customary first.')
  expect(missingSentence({ ...answer, solutions: two, complete: false })).toMatch(
    /^More answers than can be listed fit/,
  )
})

test('nothing to look for is said of a whole train and of an empty one', () => {
  expect(nothingMissingSentence({ thirdWheel: 75 })).toMatch(/^No count is missing\./)
  expect(nothingMissingSentence({ barrelTeeth: 80 })).toMatch(/^Only counts from the barrel to the centre are stated/)
  expect(nothingMissingSentence({})).toMatch(/^Neither a beat rate nor a count is stated/)
})

test('a count that was worked out notes what it rests on', () => {
  expect(plain(workedOutNote(['seconds', 'rate'], { beatRateVph: 18000 }))).toBe(
    'worked out from the seconds hand that turns once a minute and the beat rate 18 000 vph',
  )
  expect(workedOutNote(['hour-hand', 'sizes'], { dialHours: '24' })).toBe(
    'worked out from the motion work of 24 to one and the measured depth',
  )
})
