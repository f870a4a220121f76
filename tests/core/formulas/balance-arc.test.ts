import { expect, it } from 'vitest'
import { supplementaryArc, totalSwing } from '../../../core/formulas/balance-arc.ts'

it('leaves nothing free where the swing is the lift angle itself, and refuses less', () => {
  expect(totalSwing(225)).toBe(450)
  expect(supplementaryArc(26, 52)).toBe(0)
  expect(() => supplementaryArc(25, 52)).toThrow(
    expect.objectContaining({ code: 'swing-within-lift', details: { amplitudeDeg: 25, liftAngleDeg: 52 } }),
  )
})

it('refuses nothing', () => {
  expect(() => totalSwing(0)).toThrow(expect.objectContaining({ details: { field: 'amplitudeDeg', value: 0 } }))
  expect(() => supplementaryArc(270, 0)).toThrow(
    expect.objectContaining({ details: { field: 'liftAngleDeg', value: 0 } }),
  )
})
