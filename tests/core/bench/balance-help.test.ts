import { expect, it } from 'vitest'
import { balanceHelp, changesAgainst, publishedBalance } from '../../../core/bench/balance-help.ts'

it('finds the stiffness from rate and inertia', () => {
  const help = balanceHelp({ beatRateVph: 18000, inertiaMgCm2: 16 })
  expect(help).toMatchObject({
    finds: 'stiffness',
    working: {
      formula: '16 × 10⁻⁴ × (2π × 2.5)²',
      where: { beatRateVph: 18000, inertiaMgCm2: 16 },
      gives: '0.39478 µN·m/rad',
    },
  })
  if (help?.finds === 'stiffness') expect(help.stiffnessMicroNm).toBeCloseTo(0.394784, 6)
})

it('finds the inertia from rate and stiffness', () => {
  const help = balanceHelp({ beatRateVph: 18000, stiffnessMicroNm: 0.394784 })
  expect(help).toMatchObject({
    finds: 'inertia',
    working: { formula: '0.394784 × 10⁴ ÷ (2π × 2.5)²', gives: '16 mg·cm²' },
  })
})

it('finds the rate from both, and how far it is from the stated one', () => {
  const help = balanceHelp({ beatRateVph: 18000, inertiaMgCm2: 16, stiffnessMicroNm: 0.4 })
  expect(help).toMatchObject({
    finds: 'rate',
    working: { formula: '7200 ÷ (2π × √(16 × 10⁻⁴ ÷ 0.4))', gives: '18119 vph' },
  })
  if (help?.finds === 'rate') expect(help.secondsPerDay).toBeCloseTo(568.89, 1)
})

it('finds nothing while neither is known', () => {
  expect(balanceHelp({ beatRateVph: 18000 })).toBeNull()
})

it('changes a part against the gain: more inertia or length for a gain, less stiffness', () => {
  const [inertia, stiffness, length] = changesAgainst(45)
  expect(inertia).toMatchObject({ part: 'inertia', percent: expect.closeTo(0.10425, 4) })
  expect(stiffness).toMatchObject({ part: 'stiffness', percent: expect.closeTo(-0.10414, 4) })
  expect(length).toMatchObject({ part: 'length', percent: expect.closeTo(0.10425, 4) })
})

it('works the published example step by step to the printed answer', () => {
  const { printedMassG, working } = publishedBalance()
  expect(printedMassG).toBe('0.41')
  expect(working.map(({ formula, gives }) => `${formula} = ${gives}`)).toEqual([
    '11 ÷ (45° × π ÷ 180°) = 14.006 µN·m/rad',
    '14.006 × 10⁴ ÷ (2π × 3.1)² = 369.16 mg·cm²',
    '369.16 ÷ 0.95² = 409 mg',
  ])
})
