import { describe, expect, test } from 'vitest'
import { goingTrain } from '../../../core/formulas/going-train.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { labelWidth, layTrain, type TrainLayout } from '../../../renderer/drawings/train-layout.ts'

const usual: CaliberValues = {
  barrelTeeth: 72,
  centrePinion: 12,
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}

const trains: Readonly<Record<string, CaliberValues>> = {
  'a usual train': usual,
  'a long-going train': { ...usual, intermediatePinion: 12, intermediateWheel: 72 },
  'a five-wheel train': { ...usual, fifthPinion: 10, fifthWheel: 60 },
  'a train with a sweep seconds arbor': { ...usual, sweepDriver: 60, sweepPinion: 8 },
  'a long-going five-wheel train with sweep': {
    ...usual,
    intermediatePinion: 12,
    intermediateWheel: 72,
    fifthPinion: 10,
    fifthWheel: 60,
    sweepDriver: 60,
    sweepPinion: 8,
  },
  'a train of which little is known': { centreWheel: 64 },
  'an uneven train': { ...usual, barrelTeeth: 40, fourthWheel: 120, thirdWheel: 48 },
}

const at = (layout: TrainLayout, arbor: string) => {
  const found = layout.arbors.find((one) => one.arbor === arbor)
  if (!found) throw new Error(`${arbor} is not on the drawing`)
  return found
}

describe.each(Object.entries(trains))('%s', (_name, values) => {
  const train = goingTrain(values)
  const layout = layTrain(train)

  test('has every arbor once', () => {
    expect(layout.arbors.map(({ arbor }) => arbor)).toEqual(train.arbors.map(({ arbor }) => arbor))
  })

  test('has each wheel touching the pinion that it drives', () => {
    for (const { driver, driven } of train.meshes) {
      const from = at(layout, driver)
      const to = at(layout, driven)
      const circle = driven === 'sweep' ? from.sweepDriver : from.wheel
      const touching = (circle?.radius ?? Number.NaN) + (to.pinion?.radius ?? Number.NaN)
      expect(Math.hypot(from.x - to.x, from.y - to.y)).toBeCloseTo(touching, 6)
    }
  })

  test('keeps labels of one row apart and on the sheet', () => {
    for (const row of ['above', 'below'] as const) {
      const places = layout.arbors
        .filter(({ label }) => label.row === row)
        .map(({ label }) => label.x)
        .sort((one, other) => one - other)
      places.forEach((x, index) => {
        expect(x - labelWidth / 2).toBeGreaterThanOrEqual(-1e-9)
        expect(x + labelWidth / 2).toBeLessThanOrEqual(layout.width + 1e-9)
        if (index > 0) expect(x - (places[index - 1] ?? 0)).toBeGreaterThanOrEqual(labelWidth - 1e-9)
      })
    }
  })

  test('keeps circles clear of the labels and on the sheet', () => {
    for (const { x, y, wheel, pinion, sweepDriver, label } of layout.arbors) {
      for (const circle of [wheel, pinion, sweepDriver]) {
        if (!circle) continue
        expect(x - circle.radius).toBeGreaterThanOrEqual(0)
        expect(x + circle.radius).toBeLessThanOrEqual(layout.width)
        for (const other of layout.arbors) {
          if (other.label.row === 'above') expect(y - circle.radius).toBeGreaterThan(other.label.y)
          else expect(y + circle.radius).toBeLessThan(other.label.y)
        }
      }
      expect(label.y).toBeGreaterThan(0)
    }
  })
})

test('sizes of one mesh stand as its counts', () => {
  const layout = layTrain(goingTrain(usual))
  const ratio = (at(layout, 'centre').wheel?.radius ?? 0) / (at(layout, 'third').pinion?.radius ?? 1)
  expect(ratio).toBeCloseTo(80 / 10, 9)
})

test('the sweep seconds arbor stands on the centre', () => {
  const layout = layTrain(goingTrain({ ...usual, sweepDriver: 60, sweepPinion: 8 }))
  expect(at(layout, 'sweep').x).toBe(at(layout, 'centre').x)
  expect(at(layout, 'sweep').y).toBe(at(layout, 'centre').y)
})

test('a count that is not stated has a circle without teeth', () => {
  expect(at(layTrain(goingTrain({ centreWheel: 64 })), 'third').wheel?.teeth).toBeNull()
})
