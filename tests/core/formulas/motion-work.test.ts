import { expect, it } from 'vitest'
import { motionWorkRatio } from '../../../core/formulas/motion-work.ts'

it('has the pinions drive the wheels', () => {
  const work = { cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 38 }
  expect(motionWorkRatio(work).toFraction()).toBe('57/5')
})
