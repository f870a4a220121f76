import { expect, it } from 'vitest'
import { countedMotionWork } from '../../../core/bench/counted-motion-work.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'

const work: CaliberValues = { cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 }

it('holds as specified, with its working', () => {
  expect(countedMotionWork(work, {})).toMatchObject({
    holds: true,
    needed: 12,
    different: [],
    restoring: [],
    working: { formula: '36/12 × 40/10', gives: 12 },
  })
})

it('names the counted part that leads the hour hand astray, and that it restores it', () => {
  const finding = countedMotionWork(work, { hourWheel: 38, minuteWheel: 36 })
  expect(finding?.ratio.toFraction()).toBe('57/5')
  expect(finding).toMatchObject({
    holds: false,
    different: [{ field: 'hourWheel', specified: 40, there: 38 }],
    restoring: [{ field: 'hourWheel', specified: 40, there: 38 }],
  })
})

it('restores nothing by one part where two are wrong', () => {
  expect(countedMotionWork(work, { hourWheel: 38, minuteWheel: 35 })).toMatchObject({ holds: false, restoring: [] })
})

it('takes 24 turns for a 24-hour dial, and nothing of a motion work half known', () => {
  expect(countedMotionWork({ ...work, hourWheel: 80, dialHours: '24' }, {})).toMatchObject({ needed: 24, holds: true })
  const { hourWheel: _, ...half } = work
  expect(countedMotionWork(half, {})).toBeNull()
  expect(countedMotionWork(half, { hourWheel: 40 })).toMatchObject({ holds: true, different: [] })
})
