import { expect, it } from 'vitest'
import { orderLineSchema } from '../../../core/orders/order-line.ts'
import { orderOfSpring } from '../../../core/orders/order-of-spring.ts'
import { blankEntry } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'

const caliberOf = (fields: Readonly<Record<string, readonly [string, string?, string?]>>) =>
  readEntry({
    ...blankEntry(),
    maker: 'Verrin',
    designation: '8-310',
    fields: Object.fromEntries(
      Object.entries(fields).map(([key, [printed, source, page]]) => [
        key,
        [{ printed, chosen: true, ...(source && { source }), ...(page && { page }) }],
      ]),
    ),
  }).caliber

const titleOf = (key: string) => ({ hb1: 'Handbook One', hb2: 'Handbook Two' })[key] ?? key

it('writes the specified spring with its place and the gauge number as printed', () => {
  const line = orderOfSpring(
    caliberOf({
      springHeightMm: ['1.50', 'hb1', '44'],
      springThicknessMm: ['0.105', 'hb1', '44'],
      springLengthMm: ['360', 'hb1', '44'],
      barrelInsideMm: ['10.5', 'hb1', '44'],
      springEnd: ['hole', 'hb1', '44'],
      springMaterial: ['carbon steel', 'hb1', '44'],
      springGauge: ['No. 12, slit gauge', 'hb1', '44'],
    }),
    titleOf,
  )
  expect(line).toMatchObject({
    kind: 'spring',
    what: '1.50 × 0.105 × 360 mm, barrel 10.5 mm, end: hole, carbon steel, gauge as printed: No. 12, slit gauge',
    gauge: 'No. 12, slit gauge',
    caliber: { maker: 'Verrin', designation: '8-310' },
    source: 'Handbook One',
    page: '44',
  })
  expect(orderLineSchema.safeParse({ ...line, quantity: 1, state: 'open', at: '2031-05-01T08:00:00Z' }).success).toBe(
    true,
  )
})

it('names each source where the figures come from several', () => {
  const line = orderOfSpring(
    caliberOf({ springHeightMm: ['1.50', 'hb1', '44'], springThicknessMm: ['0.105', 'hb2'] }),
    titleOf,
  )
  expect(line?.source).toBe('Handbook One, p. 44; Handbook Two')
  expect(line?.page).toBeUndefined()
})

it('makes no line without height or thickness, and no size out of a gauge number', () => {
  expect(orderOfSpring(caliberOf({ springGauge: ['No. 12'], springHeightMm: ['1.50'] }), titleOf)).toBeNull()
})
