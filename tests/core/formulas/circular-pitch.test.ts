import { expect, it } from 'vitest'
import { circularPitch } from '../../../core/formulas/circular-pitch.ts'

it('is π modules, so that all the pitches make up the pitch circle', () => {
  expect(80 * circularPitch(0.13)).toBeCloseTo(Math.PI * 10.4, 10)
})

it('refuses a wheel without a module', () => {
  expect(() => circularPitch(0)).toThrow('not-positive')
})
