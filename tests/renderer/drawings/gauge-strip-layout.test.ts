import { expect, test } from 'vitest'
import { gaugeStripLayout, stripMargin, stripWidth } from '../../../renderer/drawings/gauge-strip-layout.ts'

const right = stripWidth - stripMargin
const strip = { limits: { low: 0.03, high: 0.05 }, reading: null, span: 0.1, step: 0.01 }

test('limits and reading stand to one scale', () => {
  const { band, mark, ticks } = gaugeStripLayout({ ...strip, reading: { value: 0.04, low: 0.035, high: 0.05 } })
  expect(band).toEqual({ from: 75.2, to: 120, open: false })
  expect(mark).toEqual({ at: 97.6, from: 86.4, to: 120, past: false })
  expect(ticks).toHaveLength(11)
  expect([ticks[0], ticks[5], ticks.at(-1)]).toEqual([stripMargin, 120, right])
})

test('what lies beyond the strip is held at its end and said to be past', () => {
  const { mark } = gaugeStripLayout({ ...strip, reading: { value: 0.15, low: 0.09, high: 0.21 } })
  expect(mark).toEqual({ at: right, from: 209.6, to: right, past: true })
})

test('limits without a greatest figure are open to the right end', () => {
  const limits = { low: 0.02, high: Number.POSITIVE_INFINITY }
  expect(gaugeStripLayout({ ...strip, limits }).band).toEqual({ from: 52.8, to: right, open: true })
})

test('without limits and reading there are the ticks alone', () => {
  expect(gaugeStripLayout({ ...strip, limits: null })).toMatchObject({ band: null, mark: null })
})
