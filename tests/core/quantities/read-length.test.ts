import { describe, expect, test } from 'vitest'
import { readLength } from '../../../core/quantities/read-length.ts'

const ligne = 31250 / 13853
const read = (text: string) => {
  const answer = readLength(text)
  if (!answer.ok) throw new Error(`${text}: ${answer.problem.code}`)
  return answer.quantity
}
const refusal = (text: string) => {
  const answer = readLength(text)
  return answer.ok ? 'read' : answer.problem.code
}

describe('a length is read as handbooks print it (contract, section 1)', () => {
  test.each([
    ["17'''", 17 * ligne, 'ligne'],
    ['17 lig', 17 * ligne, 'ligne'],
    ['17‴', 17 * ligne, 'ligne'],
    ['17’’’', 17 * ligne, 'ligne'],
    ['17′′′', 17 * ligne, 'ligne'],
    ['17”’', 17 * ligne, 'ligne'],
    ["8¾'''", 8.75 * ligne, 'ligne'],
    ["8 3/4'''", 8.75 * ligne, 'ligne'],
    ["8-3/4'''", 8.75 * ligne, 'ligne'],
    ["10,5'''", 10.5 * ligne, 'ligne'],
    ['12 dz', ligne, 'douzieme'],
    ['12 douziemes', ligne, 'douzieme'],
    ['12 douzièmes', ligne, 'douzieme'],
    ['0.0071 in', 0.18034, 'inch'],
    ['0.0071"', 0.18034, 'inch'],
    ['0.0071″', 0.18034, 'inch'],
    ['0.0071”', 0.18034, 'inch'],
    ['0,18', 0.18, 'mm'],
    ['.18', 0.18, 'mm'],
    ['0,18 mm', 0.18, 'mm'],
    ['18/100', 0.18, 'hundredths-mm'],
    ['15/10', 1.5, 'tenths-mm'],
    ['180 µm', 0.18, 'micrometre'],
    ['180 μm', 0.18, 'micrometre'],
    ['180 um', 0.18, 'micrometre'],
    ['1 234,5', 1234.5, 'mm'],
    ['1,234.5', 1234.5, 'mm'],
  ])('%s', (text, value, unit) => {
    expect(read(text).value).toBeCloseTo(value, 12)
    expect(read(text).unit).toBe(unit)
  })
})

describe('limits are read with their nominal', () => {
  test.each([
    ['1.2 ±0.01', 1.2, 1.19, 1.21],
    ['1,2 ± 0,01 mm', 1.2, 1.19, 1.21],
    ['1.2 +/- 0.01', 1.2, 1.19, 1.21],
    ['1.2 +0.012/-0.005', 1.2, 1.195, 1.212],
    ['1.2 +0.012/−0.005', 1.2, 1.195, 1.212],
    ['1.2 0/-0.005', 1.2, 1.195, 1.2],
    ['1.2 +0.012/0', 1.2, 1.2, 1.212],
    ['1.190…1.210', 1.2, 1.19, 1.21],
    ['1.190...1.210', 1.2, 1.19, 1.21],
    ['1.190–1.210', 1.2, 1.19, 1.21],
    ['1.190 to 1.210 mm', 1.2, 1.19, 1.21],
    ["8…9'''", 8.5 * ligne, 8 * ligne, 9 * ligne],
    ['max 1.21', 1.21, undefined, 1.21],
    ['min 1.19', 1.19, 1.19, undefined],
    // ISO 286 grades as two independent pages print them (research/reliability-ux.md section 8, grade B)
    ['2 h6', 2, 1.994, 2],
    ['2 H7', 2, 2, 2.01],
    ['2 js6', 2, 1.997, 2.003],
    ['2 JS6', 2, 1.997, 2.003],
    ['3 h5', 3, 2.996, 3],
    ['3.1 h5', 3.1, 3.095, 3.1],
    ['30 H11', 30, 30, 30.13],
  ])('%s', (text, value, low, high) => {
    const found = read(text)
    expect(found.value).toBeCloseTo(value, 12)
    if (low === undefined) expect(found.low).toBeUndefined()
    else expect(found.low).toBeCloseTo(low, 12)
    if (high === undefined) expect(found.high).toBeUndefined()
    else expect(found.high).toBeCloseTo(high, 12)
  })
})

describe('what cannot be taken as one length is refused with its reason', () => {
  test.each([
    ['6/0', 'size-number'],
    ['16s', 'size-number'],
    ['No. 12', 'size-number'],
    ['1,234', 'ambiguous'],
    ['8 3/4', 'ambiguous'],
    ['17 lines', 'wrong-unit'],
    ["17'", 'wrong-unit'],
    ['1.21…1.19', 'limits-crossed'],
    ['2 g6', 'fit-not-tabulated'],
    ['2 h12', 'fit-not-tabulated'],
    ['31 h6', 'fit-not-tabulated'],
    ['1 1/0 mm', 'zero-denominator'],
    ['', 'empty'],
    ['  ', 'empty'],
    ['-5', 'unreadable'],
    ['thick', 'unreadable'],
    ['9'.repeat(81), 'unreadable'],
  ])('%s is %s', (text, code) => {
    expect(refusal(text)).toBe(code)
  })

  test('an ambiguous comma names both readings', () => {
    expect(readLength('1,234')).toEqual({
      ok: false,
      problem: { code: 'ambiguous', text: '1,234', readings: ['1.234 mm', '1234 mm'] },
    })
  })
})

describe('half a step of print', () => {
  test.each([
    ['0.18', 0.005],
    ['0,180', 0.0005],
    ['18/100', 0.005],
    ["17'''", ligne / 8],
    ["8¾'''", ligne / 8],
    ["8⅜'''", ligne / 16],
    ["10,5'''", ligne / 20],
    ['0.0071 in', 0.00127],
  ])('%s may lie %d mm off', (text, halfStep) => {
    expect(read(text).halfStep).toBeCloseTo(halfStep, 12)
  })
})
