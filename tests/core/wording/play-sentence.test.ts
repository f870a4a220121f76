import { expect, test } from 'vitest'
import { judgePlay, type PlayAsked } from '../../../core/bench/judge-play.ts'
import { playPlaceKeys } from '../../../core/bench/play-places.ts'
import {
  cylinderPivotSentence,
  oneLimitSentence,
  playLine,
  playSentence,
  playStandardLine,
  playSummary,
  unevenPivotsSentence,
} from '../../../core/wording/play-sentence.ts'

const finding = (value: number, asked: Partial<PlayAsked> = {}) =>
  judgePlay({
    movement: 'watch',
    place: 'third',
    measure: 'end',
    measured: { value, low: value - 0.001, high: value + 0.001 },
    ...asked,
  })

test.each([
  [0.04, {}, 'Within what was found in fine watches.'],
  [0.02, {}, 'Less than was found in fine watches. Too little freedom causes more stoppages than too much.'],
  [
    0.07,
    {},
    'More than was found in fine watches. Wide play alone seldom spoils a rate: look for wear in hole and pivot before you close it.',
  ],
  [0.03, {}, 'It may be 0.029 or 0.031 mm, which reaches past the edge: measure it finer.'],
  [
    0.01,
    { place: 'balance' },
    'Less than was found in fine watches. Too little freedom causes more stoppages than too much. The book calls it more harmful than too long a play of the lever.',
  ],
  [
    0.04,
    { place: 'fifth' },
    'No figure for this place was to be had in print: compare it with a sound movement of the same caliber.',
  ],
  [0.04, { place: 'barrel', measure: 'side' }, 'The book says “just free” and gives no figure: feel for it.'],
  [
    0.04,
    { maker: { low: 0.05, high: 0.06 } },
    'Less than the maker states. Too little freedom causes more stoppages than too much.',
  ],
  [
    0.04,
    { movement: 'cylinder', place: 'balance', measure: 'side' },
    'The rule for a cylinder goes by its pivot: type hole and pivot.',
  ],
  [
    0.01,
    { movement: 'cylinder', place: 'balance', measure: 'side', pivotMm: 0.12 },
    'Less than the rule for cylinders asks: it goes while the oil is fresh and fails once it thickens.',
  ],
  [
    0.45,
    { movement: 'clock', measure: 'side', pivotMm: 0.8 },
    'More than is usual in clocks. It has reached half the pivot: bush the hole or replace the pivot, in fine work long before.',
  ],
] as const)('%d %j: %s', (value, asked, sentence) => {
  expect(playSentence(finding(value, asked))).toBe(sentence)
})

test.each([
  [{}, '0.03 to 0.05 mm: Kleinlein 1920, p. 35'],
  [{ movement: 'clock', measure: 'side' }, '0.051 to 0.102 mm: Goodrich 1905, p. 199'],
  [{ movement: 'clock' }, 'no published figure'],
  [{ place: 'barrelArbor' }, '“merely free”: Kleinlein 1920, p. 35'],
  [{ maker: { low: 0.02, high: 0.04 } }, '0.02 to 0.04 mm, the maker’s figure'],
  [{ movement: 'cylinder', place: 'balance', measure: 'side' }, 'at least a sixth of the pivot: Goodrich 1905, p. 167'],
  [
    { movement: 'cylinder', place: 'balance', measure: 'side', pivotMm: 0.12 },
    'at least 0.02 mm, a sixth of the pivot: Goodrich 1905, p. 167',
  ],
] as const)('%j stands against %s', (asked, line) => {
  expect(playStandardLine(finding(0.04, asked).standard)).toBe(line)
})

test('no place is without its words', () => {
  for (const place of playPlaceKeys) {
    expect(playLine('end', finding(0.04, { place }))).not.toMatch(/undefined|NaN/)
    expect(playSentence(finding(0.04, { place }))).toMatch(/^[A-Z].*\.$/)
  }
})

test('a play is a line for the job sheet', () => {
  expect(playLine('end', finding(0.04))).toBe(
    'Third wheel, end-shake: 0.04 ± 0.001 mm, within (0.03 to 0.05 mm: Kleinlein 1920, p. 35)',
  )
})

test('the summary counts by verdict, and says what to do where nothing is measured', () => {
  expect(playSummary([finding(0.04), finding(0.04), finding(0.01)])).toBe('3 measured: 2 within, 1 below.')
  expect(playSummary([finding(0.03), finding(0.04, { place: 'fifth' })])).toBe(
    '2 measured: 1 cannot tell, 1 not judged.',
  )
  expect(playSummary([])).toMatch(/^Nothing is measured yet\./)
})

test('one limit alone is refused with what to do', () => {
  expect(oneLimitSentence('End-shake', 'max 0.05')).toBe(
    'End-shake: "max 0.05" is one limit only; write what you measured, with ± where you know it.',
  )
})

test('a wide pivot beside a close one is told to bind', () => {
  expect(unevenPivotsSentence).toMatch(/bind as soon as the mainspring’s power comes on\.$/)
})

test('the pivot of a cylinder is told with its source', () => {
  expect(cylinderPivotSentence(0.11)).toBe(
    'Its pivots are usually about an eighth of it, 0.11 mm (Goodrich 1905, p. 167).',
  )
})
