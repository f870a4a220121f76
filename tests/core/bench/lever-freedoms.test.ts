import { describe, expect, test } from 'vitest'
import { judgeFreedom, lockLeft } from '../../../core/bench/lever-freedoms.ts'

const exact = (value: number) => ({ value, low: value, high: value })

describe('a freedom of the lever escapement', () => {
  test.each([
    ['lock', 'club', 1.5, 'within'],
    ['lock', 'club', 1.375, 'within'],
    ['lock', 'club', 1.37, 'below'],
    ['lock', 'ratchet', 1.625, 'within'],
    ['lock', 'ratchet', 1.63, 'above'],
    ['drop', 'club', 1.5, 'within'],
    ['drop', 'club', 2, 'above'],
    ['drop', 'ratchet', 2, 'within'],
    ['drop', 'ratchet', 1.5, 'below'],
    ['run', 'club', 0.25, 'within'],
    ['run', 'club', 0.5, 'within'],
    ['run', 'club', 0.51, 'above'],
    ['edge', 'club', 1, 'within'],
    ['edge', 'club', 1.25, 'within'],
    ['edge', 'club', 0.99, 'below'],
    ['slot', 'club', 0.25, 'within'],
    ['slot', 'club', 0.55, 'above'],
  ] as const)('%s with a %s tooth, %d: %s', (freedom, tooth, deg, verdict) => {
    expect(judgeFreedom(freedom, tooth, exact(deg)).verdict).toBe(verdict)
  })

  test('cannot be told where what it may be off reaches past the edge', () => {
    expect(judgeFreedom('run', 'club', { value: 0.45, low: 0.35, high: 0.55 }).verdict).toBe('cannot-tell')
  })
})

describe('the lock that a jar leaves', () => {
  test('is lock and run less the freedom at the edge', () => {
    expect(lockLeft({ lock: exact(1.5), run: exact(0.5), edge: exact(1.25) })).toEqual({
      leftDeg: exact(0.75),
      verdict: 'holds',
    })
  })

  test('fails where nothing is left', () => {
    expect(lockLeft({ lock: exact(1), run: exact(0.25), edge: exact(1.25) }).verdict).toBe('fails')
    expect(lockLeft({ lock: exact(1), run: exact(0.25), edge: exact(1.5) }).verdict).toBe('fails')
  })

  test('takes every reading the worst way', () => {
    const off = (value: number) => ({ value, low: value - 0.25, high: value + 0.25 })
    expect(lockLeft({ lock: off(1.5), run: off(0.5), edge: off(1.25) })).toEqual({
      leftDeg: { value: 0.75, low: 0, high: 1.5 },
      verdict: 'cannot-tell',
    })
    const slight = { value: 1.25, low: 1.2, high: 1.3 }
    expect(lockLeft({ lock: exact(1), run: exact(0.25), edge: slight }).verdict).toBe('cannot-tell')
  })
})
