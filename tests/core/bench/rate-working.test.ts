import { expect, it } from 'vitest'
import { rateWorking } from '../../../core/bench/rate-working.ts'

it('gives every form of a rate with its sum', () => {
  expect(rateWorking(18000).map(({ form, working }) => `${form}: ${working.formula} = ${working.gives}`)).toEqual([
    'hertz: 18000 ÷ 7200 = 2.5 Hz',
    'beats-a-second: 18000 ÷ 3600 = 5 a second',
    'beats-a-minute: 18000 ÷ 60 = 300 a minute',
    'vibration: 3600 s ÷ 18000 = 200 ms',
    'oscillation: 7200 s ÷ 18000 = 400 ms',
  ])
  expect(rateWorking(16200)[3]?.working.gives).toBe('222.2222 ms')
})
