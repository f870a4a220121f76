import { describe, expect, it } from 'vitest'
import { readDailyGain, readFigure } from '../../../core/quantities/read-figure.ts'

describe('a figure of the bench', () => {
  it.each([
    ['12', 12],
    ['12.3', 12.3],
    ['12,3 ms', 12.3],
    ['1/2', 0.5],
    ['12 MS', 12],
  ])('%s is read', (text, value) => {
    expect(readFigure(text, ['ms'])).toEqual({ ok: true, value })
  })

  it.each([
    ['', 'empty'],
    ['fast', 'unreadable'],
    ['12 mm', 'wrong-unit'],
    ['1,234', 'ambiguous'],
    ['1/0', 'zero-denominator'],
    ['9'.repeat(81), 'unreadable'],
    ['-3', 'unreadable'],
  ])('%s is refused', (text, code) => {
    expect(readFigure(text, ['ms'])).toMatchObject({ ok: false, problem: { code } })
  })
})

describe('a gain in a day', () => {
  it.each([
    ['45', 45],
    ['+45 s', 45],
    ['-45 s/day', -45],
    ['− 19 min a day', -1140],
    ["-19'", -1140],
    ['0', 0],
  ])('%s is read', (text, value) => {
    expect(readDailyGain(text)).toEqual({ ok: true, value })
  })

  it.each([
    ['', 'empty'],
    ['- lots', 'unreadable'],
    ['-3 h', 'wrong-unit'],
    ['-86400', 'impossible'],
    ['1440 min', 'impossible'],
  ])('%s is refused, as typed', (text, code) => {
    const read = readDailyGain(text)
    expect(read).toMatchObject({ ok: false, problem: { code } })
    if (!read.ok && 'text' in read.problem) expect(read.problem.text).toBe(text)
  })

  it('may come close to a whole day', () => {
    expect(readDailyGain('-86399')).toEqual({ ok: true, value: -86399 })
  })
})
