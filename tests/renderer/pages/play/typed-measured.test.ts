import { expect, test } from 'vitest'
import { typedLimits, typedMeasured } from '../../../../renderer/pages/play/typed-measured.ts'

const asked = { label: 'End-shake', kind: 'length', possible: [0, 2] } as const

test('an empty cell is neither wrong nor measured', () => {
  expect(typedMeasured(asked, ' ', undefined)).toEqual({
    text: ' ',
    value: undefined,
    echo: '',
    problem: '',
    measured: undefined,
  })
  expect(typedLimits(asked, '').limits).toBeUndefined()
})

test('what says more than its text is echoed in millimetres', () => {
  expect(typedMeasured(asked, '4/100', undefined)).toMatchObject({ echo: '0.04 mm', value: 0.04 })
  expect(typedMeasured(asked, '0,04', undefined)).toMatchObject({ echo: '', value: 0.04 })
  expect(typedMeasured(asked, '0.04 ±0.01', undefined).echo).toBe('0.04 mm, 0.03 mm to 0.05 mm')
})

test('the instrument widens what was typed without limits', () => {
  expect(typedMeasured(asked, '0.040', 0.002).measured).toEqual({ value: 0.04, low: 0.038, high: 0.042 })
})

test.each([
  ['3', 'End-shake: "3" comes to 3, outside what is possible (0 to 2); check the figure and its unit.'],
  ['x', 'End-shake: "x" cannot be read; write it as in the help beside the field.'],
  ['max 0.05', 'End-shake: "max 0.05" is one limit only; write what you measured, with ± where you know it.'],
])('%s is refused in one sentence and kept as typed', (text, problem) => {
  expect(typedMeasured(asked, text, undefined)).toMatchObject({ text, problem, value: undefined, measured: undefined })
})

test('a maker may set one limit alone', () => {
  expect(typedLimits(asked, 'max 0.05').limits).toEqual({ low: 0, high: 0.05 })
  expect(typedLimits(asked, '3')).toMatchObject({ limits: undefined, problem: expect.stringContaining('comes to 3') })
})
