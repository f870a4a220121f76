import { expect, it } from 'vitest'
import { usableTurns } from '../../../core/springs/usable-turns.ts'

it('goes by the stop work where it allows fewer turns than the spring has', () => {
  expect(usableTurns(7.9, { stopWorkTurns: 4, springEnd: 'hole' })).toEqual({ turns: 4, boundBy: 'stop-work' })
  expect(usableTurns(7.9, { stopWorkTurns: 9 })).toEqual({ turns: 7.9, boundBy: 'end-coils' })
})

it('is an upper bound with a slipping bridle, and with any other end', () => {
  expect(usableTurns(7.9, { springEnd: 'slipping-bridle' })).toEqual({ turns: 7.9, boundBy: 'slipping-bridle' })
  expect(usableTurns(7.9, { springEnd: 'tongue' })).toEqual({ turns: 7.9, boundBy: 'end-coils' })
  expect(usableTurns(7.9, {})).toEqual({ turns: 7.9, boundBy: 'end-coils' })
})
