import { describe, expect, test } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'

/**
 * What has been printed of real work must be enterable, and a known misprint must not pass in silence.
 * Derham: The Artificial Clock-maker, London 1696. EB4: Encyclopaedia Britannica, 4th ed., 1810.
 * Goodrich: The Modern Clock, Chicago 1905. Kindler: Die Uhren, about 1905.
 * All passages read; counts recomputed.
 */
type Measured = {
  [K in CaliberFieldKey]: (typeof caliberFields)[K] extends { possible: unknown } ? K : never
}[CaliberFieldKey]
type Printed = readonly [where: string, values: { readonly [K in Measured]?: number }]

const judge = (key: Measured, value: number): 'refused' | 'remarked' | 'usual' => {
  const { possible, usual } = caliberFields[key]
  if (value < possible[0] || value > possible[1]) return 'refused'
  return value < usual[0] || value > usual[1] ? 'remarked' : 'usual'
}

const printed: readonly Printed[] = [
  [
    'EB4, Pearson’s numbers',
    {
      beatRateVph: 14400,
      centreWheel: 60,
      thirdPinion: 8,
      thirdWheel: 64,
      fourthPinion: 8,
      fourthWheel: 48,
      escapePinion: 6,
      escapeTeeth: 15,
      barrelTeeth: 50,
      centrePinion: 10,
      goingHours: 30,
    },
  ],
  [
    'Derham p. 19-25, 16-hour work',
    {
      beatRateVph: 20196,
      hoursPerCentreTurn: 4 / 3,
      centreWheel: 55,
      thirdPinion: 5,
      thirdWheel: 45,
      fourthPinion: 5,
      fourthWheel: 40,
      escapePinion: 5,
      escapeTeeth: 17,
      goingHours: 16,
    },
  ],
  [
    'Derham p. 110, house watch',
    { beatRateVph: 2736, escapeTeeth: 19, centreWheel: 56, thirdPinion: 7, thirdWheel: 54, fourthPinion: 6 },
  ],
  ['Derham p. 110, motion work', { cannonPinion: 48, minuteWheel: 48, minutePinion: 6, hourWheel: 72 }],
  ['Goodrich p. 295, motion work', { minutePinion: 7, hourWheel: 84 }],
  [
    'EB4, clock of two stages',
    { beatRateVph: 7200, centreWheel: 72, thirdPinion: 6, thirdWheel: 60, escapePinion: 6, escapeTeeth: 30 },
  ],
  [
    'EB4, Franklin’s clock',
    {
      beatRateVph: 3600,
      hoursPerCentreTurn: 4,
      centreWheel: 160,
      thirdPinion: 10,
      thirdWheel: 120,
      escapePinion: 8,
      escapeTeeth: 30,
    },
  ],
  ['EB4, Ferguson’s clock', { beatRateVph: 3600, hoursPerCentreTurn: 12, escapeTeeth: 90 }],
  ['Goodrich p. 257-258, gravity escapement', { beatRateVph: 1800, hoursPerCentreTurn: 3, escapeTeeth: 3 }],
  ['Goodrich p. 266, regulator', { barrelTeeth: 144, centrePinion: 8, goingHours: 180 }],
  [
    'Derham p. 114, seven months',
    { barrelTeeth: 60, intermediatePinion: 8, intermediateWheel: 56, centrePinion: 8, goingHours: 5040 },
  ],
  ['Derham p. 115, a year', { barrelTeeth: 108, intermediatePinion: 12, intermediateWheel: 72, goingHours: 9216 }],
  ['Dietzschold p. 205, tower clock (read in excerpt)', { beatRateVph: 2100, escapeTeeth: 84 }],
  ['Goodrich p. 283, stop-work', { stopWorkTurns: 10 }],
  [
    'Kindler p. 144, exhibition watch',
    { diameterMm: 9, barrelInsideMm: 4.18, springThicknessMm: 0.045, goingHours: 28 },
  ],
]

describe('published work is not refused', () => {
  test.each(printed)('%s', (_where, values) => {
    for (const [key, value] of Object.entries(values)) expect(judge(key as Measured, value), key).not.toBe('refused')
  })
})

test('the misprinted spring length of 3.4 mm in Kindler p. 144 is refused', () => {
  expect(judge('springLengthMm', 3.4)).toBe('refused')
})

test('the length that its mass and thickness allow is only remarked on', () => {
  // 118 to 136 mm: derived from the printed 38 mg and 0.045 mm.
  expect(judge('springLengthMm', 118)).toBe('remarked')
  expect(judge('springLengthMm', 136)).toBe('remarked')
})

test('thirty escape teeth in a watch, as a mirrored encyclopaedia needs for 36 000, are remarked on', () => {
  expect(judge('escapeTeeth', 30)).toBe('remarked')
  for (const teeth of [13, 15, 17, 19, 20, 21]) expect(judge('escapeTeeth', teeth)).toBe('usual')
})
