import { expect, it } from 'vitest'
import { compareStrip } from '../../../core/springs/compare-strip.ts'
import { sizeDifference, sizeVerdictWords, stripSentence } from '../../../core/wording/strip-sentence.ts'

const caliber = {
  barrelInsideMm: 10.5,
  barrelArborMm: 3.4,
  barrelDepthMm: 1.6,
  springHeightMm: 1.5,
  springThicknessMm: 0.105,
  springLengthMm: 360,
  springEnd: 'tongue',
  barrelTeeth: 80,
  centrePinion: 10,
} as const
const said = (strip: Parameters<typeof compareStrip>[1], of: Parameters<typeof compareStrip>[0] = caliber) =>
  stripSentence(compareStrip(of, strip))

it('says by how much a strip is thicker, and what that does to turns, hours and torque', () => {
  expect(said({ thicknessMm: 0.11 })).toBe(
    'The strip in the barrel is 0.005 mm thicker than specified: not the maker’s spring. ' +
      'It gives 0.4 turns fewer (3 h) and some 9.8 to 15 % more torque.',
  )
})

it('says more than one difference in one sentence', () => {
  expect(said({ thicknessMm: 0.1, lengthMm: 400 })).toContain('is 0.005 mm thinner and 40 mm longer than specified')
  expect(said({ heightMm: 1.7 })).toContain('It is 0.1 mm higher than the barrel is deep.')
  expect(said({ thicknessMm: 0.105, end: 'hole' })).toBe(
    'The strip in the barrel has an end that does not hold in this barrel: not the maker’s spring.',
  )
  expect(said({ thicknessMm: 0.3 })).toContain('measure again')
})

it('says what was found to be as specified', () => {
  expect(said({ heightMm: 1.5, thicknessMm: 0.105 })).toBe(
    'The strip in the barrel is the one specified, as far as it was measured: thickness and height.',
  )
})

it('says why it cannot be told', () => {
  expect(said({ thicknessMm: 0.109 })).toContain('the thickness is 0.004 mm off, within what the reading leaves open')
  expect(said({})).toContain('Measure the strip')
  expect(said({ thicknessMm: 0.1 }, {})).toContain('nothing to set it beside')
  expect(said({ heightMm: 1.5, thicknessMm: 0.105, end: 'double-brace' }, { ...caliber, springEnd: 'hole' })).toContain(
    'does not hold',
  )
  expect(
    said({ heightMm: 1.5, thicknessMm: 0.105, end: 'hole-with-brace' }, { ...caliber, springEnd: 'hole' }),
  ).toContain('look at the hook')
})

it('has a word, a mark and a difference for every size', () => {
  expect(sizeVerdictWords('length', 'more')).toEqual({ word: 'longer', mark: '✕' })
  expect(sizeVerdictWords('height', 'less')).toEqual({ word: 'lower', mark: '✕' })
  expect(sizeDifference('thickness', 0.005)).toBe('+0.005\u202fmm')
  expect(sizeDifference('thickness', -0.005)).toBe('−0.005\u202fmm')
  expect(sizeDifference('length', null)).toBe('–')
})
