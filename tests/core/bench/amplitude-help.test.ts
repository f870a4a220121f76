import { expect, it } from 'vitest'
import { amplitudeHelp, amplitudesAtOtherLiftAngles, liftTimes } from '../../../core/bench/amplitude-help.ts'

const reading = { liftAngleDeg: 52, beatRateVph: 18000, liftTimeMs: 12 }

it('sets the exact and the usual formula side by side, each with its working', () => {
  const help = amplitudeHelp(reading)
  expect(help.exact).toBeCloseTo(276.2774, 4)
  expect(help.usual).toBeCloseTo(275.8686, 4)
  expect(help.difference).toBeCloseTo(-0.4088, 4)
  expect(help.totalSwing).toBeCloseTo(552.5548, 4)
  expect(help.free).toBeCloseTo(500.5548, 4)
  expect(help.exactWorking).toEqual({
    formula: '52° ÷ (2 × sin(180° × 18000 × 0.012 ÷ 7200))',
    where: reading,
    gives: '276.28°',
  })
  expect(help.usualWorking).toMatchObject({ formula: '3600 × 52° ÷ (π × 18000 × 0.012)', gives: '275.87°' })
})

it('says from 330 degrees on that the balance would knock', () => {
  expect(amplitudeHelp({ ...reading, liftTimeMs: 10.05 })).toMatchObject({ knocks: false })
  expect(amplitudeHelp({ ...reading, liftTimeMs: 10 })).toMatchObject({ knocks: true })
})

it('shows what a wrong lift angle makes of one swing, in proportion', () => {
  const rows = amplitudesAtOtherLiftAngles(270, 54)
  expect(rows.map(({ liftAngleDeg }) => liftAngleDeg)).toEqual([52, 53, 54, 55, 56])
  expect(rows.map(({ amplitudeDeg }) => Math.round(amplitudeDeg))).toEqual([260, 265, 270, 275, 280])
  expect(amplitudesAtOtherLiftAngles(270, 1).map(({ liftAngleDeg }) => liftAngleDeg)).toEqual([1, 2, 3])
})

it('tabulates lift times from 180 to 315 degrees, and none for a swing within the lift', () => {
  const rows = liftTimes(52, 18000)
  expect(rows[0]?.amplitudeDeg).toBe(180)
  expect(rows[0]?.liftTimeMs).toBeCloseTo(18.4558, 4)
  expect(rows.at(-1)?.amplitudeDeg).toBe(315)
  expect(rows.at(-1)?.liftTimeMs).toBeCloseTo(10.5212, 4)
  expect(liftTimes(400, 18000)[0]?.amplitudeDeg).toBe(200)
})
