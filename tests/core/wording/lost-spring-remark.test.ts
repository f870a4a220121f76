import { expect, it } from 'vitest'
import { lostSpring } from '../../../core/springs/lost-spring.ts'
import { lostSpringCaution, lostSpringRemark } from '../../../core/wording/lost-spring-remark.ts'

it('says what an estimate rests on', () => {
  const values = { barrelInsideMm: 10.5, barrelArborMm: 3.4, barrelTeeth: 80, centrePinion: 10, goingHours: 36 }
  expect(lostSpring(values)?.remarks.map(lostSpringRemark)).toEqual([
    '36 h of going ÷ 8 h a turn, and 1.5 turns for the slack near let-down: 6 theoretical turns.',
    'The depth of the barrel is not stated, so the height cannot be said. Measure it from floor to lid.',
  ])
})

it('is a whole sentence for every remark', () => {
  const estimates = [
    lostSpring({ barrelInsideMm: 10.5 }),
    lostSpring({ barrelInsideMm: 10.5, stopWorkTurns: 4, barrelDepthMm: 1.6, springEnd: 'slipping-bridle' }),
    lostSpring({ barrelInsideMm: 10.5, barrelArborMm: 1.5 }, 6),
    lostSpring({ barrelInsideMm: 10.5, barrelArborMm: 4.5 }, 7),
  ]
  const sentences = estimates.flatMap((estimate) => estimate?.remarks.map(lostSpringRemark) ?? [])
  expect(new Set(sentences.map((sentence) => /^[A-Z0-9].*\.$/.test(sentence)))).toEqual(new Set([true]))
  expect(lostSpringCaution).toContain('not a specification')
})
