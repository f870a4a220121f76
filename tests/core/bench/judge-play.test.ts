import { describe, expect, test } from 'vitest'
import { judgePlay, type PlayAsked, pivotsUneven } from '../../../core/bench/judge-play.ts'

const about = (value: number, off = 0.001) => ({ value, low: value - off, high: value + off })
const judged = (asked: Partial<PlayAsked> & Pick<PlayAsked, 'measured'>) =>
  judgePlay({ movement: 'watch', place: 'third', measure: 'end', ...asked })

describe('the verdict', () => {
  test.each([
    [0.04, 'within'],
    [0.02, 'below'],
    [0.07, 'above'],
    [0.03, 'cannot-tell'],
  ] as const)('an end-shake of %d of the third wheel is %s', (value, verdict) => {
    expect(judged({ measured: about(value) }).verdict).toBe(verdict)
  })

  test('is not given where no figure is in print', () => {
    expect(judged({ place: 'fifth', measured: about(0.04) }).verdict).toBe('no-figure')
    expect(judged({ place: 'barrel', measure: 'side', measured: about(0.04) }).verdict).toBe('no-figure')
  })

  test('goes by the maker’s figure, and then no book speaks', () => {
    const found = judged({
      place: 'balance',
      measured: about(0.01),
      maker: { low: 0.02, high: 0.04 },
    })
    expect(found).toMatchObject({ verdict: 'below', standard: { by: 'maker' }, remarks: [] })
    expect(judged({ place: 'balance', measured: about(0.01), maker: { low: 0.005, high: 0.02 } }).verdict).toBe(
      'within',
    )
  })
})

describe('what the books say of a case', () => {
  test.each([
    ['centre', 'end', 0.02, ['called-too-close']],
    ['centre', 'side', 0.01, ['called-too-close']],
    ['centre', 'end', 0.025, []],
    ['third', 'end', 0.02, []],
    ['fourth', 'end', 0.08, ['called-too-great']],
    ['fourth', 'side', 0.03, ['called-too-great']],
    ['fourth', 'end', 0.06, ['wide-needs-no-cure']],
    ['balance', 'end', 0.01, ['called-detrimental']],
    ['balance', 'end', 0.015, []],
    ['lever', 'end', 0.05, ['called-less-harmful']],
    ['lever', 'end', 0.06, ['wide-needs-no-cure']],
    ['lever', 'side', 0.02, ['pin-may-strike']],
    ['escape', 'side', 0.02, ['pin-may-strike']],
    ['balance', 'side', 0.02, ['pin-may-strike']],
    ['third', 'side', 0.04, ['wide-needs-no-cure']],
  ] as const)('%s, %s, %d: %j', (place, measure, value, remarks) => {
    expect(judged({ place, measure, measured: about(value) }).remarks).toEqual(remarks)
  })

  test('only a watch with a lever has a pin that may strike', () => {
    const asked = { place: 'escape', measure: 'side', measured: about(0.02) } as const
    for (const movement of ['cylinder', 'other-watch'] as const)
      expect(judged({ ...asked, movement })).toMatchObject({ verdict: 'above', remarks: ['wide-needs-no-cure'] })
  })

  test('a case is not named while the verdict cannot be told', () => {
    expect(judged({ place: 'centre', measured: about(0.02, 0.01) })).toMatchObject({
      verdict: 'cannot-tell',
      remarks: [],
    })
  })
})

describe('a worn clock', () => {
  const worn = (value: number, off = 0.001) =>
    judged({ movement: 'clock', measure: 'side', measured: about(value, off), pivotMm: 0.8 })

  test('is bushed at half the pivot at the latest', () => {
    expect(worn(0.399).remarks).toEqual(['perhaps-worn-out'])
    expect(worn(0.398).remarks).toEqual([])
    expect(worn(0.4, 0).remarks).toEqual(['worn-out'])
    expect(worn(0.45, 0.06).remarks).toEqual(['perhaps-worn-out'])
    expect(worn(0.45).remarks).toEqual(['worn-out'])
  })

  test('is told so also where the maker’s figure is known', () => {
    const found = judged({
      movement: 'clock',
      measure: 'side',
      measured: about(0.5),
      pivotMm: 0.8,
      maker: { low: 0.05, high: 0.1 },
    })
    expect(found).toMatchObject({ verdict: 'above', remarks: ['worn-out'] })
  })

  test('the rule is for clocks, for the side, and for a pivot that was measured', () => {
    const asked = { measured: about(0.45), pivotMm: 0.8 }
    expect(judged({ ...asked, movement: 'watch', measure: 'side' }).remarks).not.toContain('worn-out')
    expect(judged({ ...asked, movement: 'clock', measure: 'end' }).remarks).toEqual([])
    expect(judged({ measured: about(0.45), movement: 'clock', measure: 'side' }).remarks).toEqual([])
  })
})

test('one wide pivot beside a close one is uneven, whichever is which', () => {
  expect(pivotsUneven('above', 'below')).toBe(true)
  expect(pivotsUneven('below', 'above')).toBe(true)
  expect(pivotsUneven('above', 'above')).toBe(false)
  expect(pivotsUneven('above', 'within')).toBe(false)
  expect(pivotsUneven('within', 'below')).toBe(false)
  expect(pivotsUneven(undefined, 'below')).toBe(false)
})
