import { expect, it } from 'vitest'
import { OutsideRange } from '../../../core/formulas/outside-range.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { fitSpring } from '../../../core/springs/fit.ts'
import { type FitLineKey, fitLineKeys, fitWorking } from '../../../core/springs/fit-working.ts'
import { workingLine } from '../../../core/wording/working-line.ts'

const watch: CaliberValues = {
  barrelInsideMm: 12,
  barrelArborMm: 4,
  barrelDepthMm: 1.6,
  springHeightMm: 1.5,
  springThicknessMm: 0.12,
  springLengthMm: 400,
  barrelTeeth: 72,
  centrePinion: 12,
}

const linesOf = (values: CaliberValues) =>
  Object.fromEntries(
    fitWorking(values).map((line) => [line.key, 'working' in line ? workingLine(line.working) : line.missing]),
  )

it('writes every figure with its sum (vector F2 of tests/published/mainsprings.test.ts)', () => {
  expect(linesOf(watch)).toEqual({
    'coils-down': '(6 − √(6² − 400 × 0.12 ÷ π)) ÷ 0.12 = 12.066',
    'coils-wound': '(√(2² + 400 × 0.12 ÷ π) − 2) ÷ 0.12 = 19.923',
    turns: '19.923 − 12.066 = 7.857',
    fill: '4 × 400 × 0.12 ÷ (π × (12² − 4²)) = 0.477',
    'best-length': 'π × (12² − 4²) ÷ (8 × 0.12) = 418.879 mm',
    'most-turns': '(√(2 × (12² + 4²)) − (12 + 4)) ÷ (2 × 0.12) = 7.869',
    'hours-per-turn': '72/12 = 6 h',
    hours: '7.857 × 6 = 47.141 h',
    'height-clearance': '1.6 − 1.5 = 0.1 mm',
    'arbor-to-thickness': '4 ÷ 0.12 = 33.333',
  })
})

it('finds what the fit finds', () => {
  const bridled: CaliberValues = { ...watch, springEnd: 'slipping-bridle', bridleThicknessMm: 0.12, stopWorkTurns: 4 }
  const same = {
    'coils-down': 'coilsDown',
    'coils-wound': 'coilsWound',
    turns: 'turns',
    fill: 'fill',
    'best-length': 'bestLengthMm',
    'most-turns': 'mostTurns',
    'hours-per-turn': 'hoursPerTurn',
    hours: 'goingHours',
    'height-clearance': 'heightClearanceMm',
    'arbor-to-thickness': 'arborToThickness',
  } as const satisfies Partial<Record<FitLineKey, keyof ReturnType<typeof fitSpring>>>
  for (const values of [watch, bridled]) {
    const fit = fitSpring(values)
    for (const [key, name] of Object.entries(same)) {
      const line = fitWorking(values).find((each) => each.key === key)
      expect(line && 'value' in line ? line.value : null, key).toBeCloseTo(fit[name] ?? Number.NaN, 6)
    }
  }
  expect(linesOf(bridled)['within-bridle']).toBe('12 − 2 × 0.12 = 11.76 mm')
})

it('names what is missing for each figure, in the order of the bench', () => {
  const { springLengthMm: _, ...short } = watch
  expect(linesOf(short)).toMatchObject({ turns: ['springLengthMm'], hours: ['springLengthMm'] })
  expect(linesOf(short)['most-turns']).toContain('= 7.869')
  expect(linesOf({ ...short, stopWorkTurns: 4 }).hours).toBe('4 × 6 = 24 h')
  expect(linesOf({})).toMatchObject({
    turns: ['barrelInsideMm', 'barrelArborMm', 'springThicknessMm', 'springLengthMm'],
    'best-length': ['barrelInsideMm', 'barrelArborMm', 'springThicknessMm'],
    'hours-per-turn': ['barrelTeeth', 'centrePinion'],
    'height-clearance': ['barrelDepthMm', 'springHeightMm'],
  })
  const keys = fitWorking(watch).map(({ key }) => key)
  expect(keys).toEqual(fitLineKeys.filter((key) => keys.includes(key)))
})

it('refuses sizes that do not go together, and works nothing out', () => {
  expect(() => fitWorking({ ...watch, springLengthMm: 900 })).toThrow(OutsideRange)
  expect(() => fitWorking({ ...watch, barrelArborMm: 12 })).toThrow(OutsideRange)
  expect(() => fitWorking({ ...watch, springEnd: 'slipping-bridle', bridleThicknessMm: 6 })).toThrow(OutsideRange)
})
