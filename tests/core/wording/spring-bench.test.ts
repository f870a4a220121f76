import { expect, it } from 'vitest'
import { fitLineKeys } from '../../../core/springs/fit-working.ts'
import { sensitivities } from '../../../core/springs/sensitivity.ts'
import {
  fitLineNames,
  sensitivityLine,
  torqueSentence,
  usableTurnsSentence,
  waitsFor,
  woundText,
} from '../../../core/wording/spring-bench.ts'

it('has a name for every figure of the bench', () => {
  for (const key of fitLineKeys) expect(fitLineNames[key]).toMatch(/^[A-Z]/)
})

it('says what each size does to the turns, in a line', () => {
  const sizes = { barrelInsideMm: 10, barrelArborMm: 10 / 3, springThicknessMm: 0.1, springLengthMm: 349.066 }
  const lines = sensitivities(sizes).map(sensitivityLine)
  expect(lines[0]).toMatch(/^0\.005 mm more thickness: −0\.\d+ turns \(−\d\.\d %\)$/)
  expect(lines[2]).toMatch(/^0\.05 mm more barrel inside: \+0\.\d+ turns \(\+\d(\.\d)? %\)$/)
})

it('keeps usable turns apart from theoretical ones, with what bounds them', () => {
  expect(usableTurnsSentence({ turns: 4, boundBy: 'stop-work' })).toMatch(/^4: the stop work/)
  expect(usableTurnsSentence({ turns: 7.857, boundBy: 'slipping-bridle' })).toMatch(/^At most 7\.86: .*upper bound/)
  expect(usableTurnsSentence({ turns: 7.857, boundBy: 'end-coils' })).toMatch(/^Fewer than 7\.86: /)
})

it('claims no torque but as a band against the one specified, and warns of more', () => {
  const more = torqueSentence(1.102, 1.15)
  expect(more).toMatch(/^About 10\.2 to 15 % more torque than the spring specified/)
  expect(more).toContain('cannot be told from sizes')
  expect(more).toContain('cleaning and repair, not force')
  expect(torqueSentence(0.907, 0.864)).not.toContain('not force')
})

it('says how far the spring is wound, and for how long it would go', () => {
  expect(woundText(0, 7.857, 6)).toBe('let down')
  expect(woundText(3.2, 7.857, 6)).toBe('3.2 turns wound, 19.2 h')
  expect(woundText(3.2, 7.857, null)).toBe('3.2 turns wound')
  expect(woundText(7.857, 7.857, 6)).toBe('wound: 7.86 theoretical turns, 47.1 h')
  expect(waitsFor(['springLengthMm', 'barrelArborMm'])).toBe('not stated: spring length and barrel arbor')
})
