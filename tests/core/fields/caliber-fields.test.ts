import { describe, expect, test } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { type FieldDef, languages } from '../../../core/fields/field.ts'
import { listFields } from '../../../core/fields/list-fields.ts'
import { foldHeading } from '../../../core/record/fold-heading.ts'

const rows = Object.entries(caliberFields) as [CaliberFieldKey, FieldDef][]

/** The agreed keys, by heading of the contract; they are permanent, so this list only grows. */
const agreed: Record<string, string> = {
  identity: 'maker designation alsoKnownAs basedOn firstYear lastYear notes',
  movement:
    'shape diameterMm lengthMm widthMm heightMm secondsDisplay winding setting dialHours dialFeet hourHandMm minuteHandMm secondsHandMm',
  balance: 'escapement beatRateVph liftAngleDeg balanceSpring',
  train:
    'barrelTeeth intermediatePinion intermediateWheel centrePinion centreWheel thirdPinion thirdWheel fourthPinion fourthWheel fifthPinion fifthWheel escapePinion escapeTeeth hoursPerCentreTurn sweepDriver sweepPinion',
  motion: 'cannonPinion minuteWheel minutePinion hourWheel',
  barrel:
    'barrelInsideMm barrelDepthMm barrelArborMm springHeightMm springThicknessMm springLengthMm springEnd springMaterial bridleThicknessMm springGauge goingHours stopWorkTurns',
  jewels: 'jewelsStated',
}

const agreedChoices: Record<string, string> = {
  shape: 'round oval tonneau rectangular baguette other',
  secondsDisplay: 'none small centre-direct centre-indirect',
  winding: 'key stem self-winding',
  setting: 'key pin lever stem',
  dialHours: '12 24',
  escapement: 'lever pin-lever cylinder duplex detent verge other',
  balanceSpring: 'flat overcoil helical',
  springEnd: 'hole hole-with-brace tongue double-brace t-end swivel slipping-bridle loop other',
  springMaterial: 'carbon-steel stainless cobalt-nickel other',
}

const kindOfEnding: Record<string, string> = {
  Mm: 'length',
  Vph: 'rate',
  Deg: 'angle',
  Teeth: 'count',
  Pinion: 'count',
  Wheel: 'count',
  Year: 'year',
}

describe('the keys are the agreed ones', () => {
  test.each(Object.entries(agreed))('in the group %s, in this order', (group, keys) => {
    expect(rows.filter(([, row]) => row.group === group).map(([key]) => key)).toEqual(keys.split(' '))
  })

  test('each choice offers the agreed answers', () => {
    const choices = rows.flatMap(([key, row]) => (row.kind === 'choice' ? [[key, Object.keys(row.choices)]] : []))
    const expected = Object.entries(agreedChoices).map(([key, words]) => [key, words.split(' ')])
    expect(choices).toEqual(expected)
  })

  test('a key that ends in a unit or a part is of its kind', () => {
    for (const [key, row] of rows) {
      const ending = Object.keys(kindOfEnding).find((word) => key.endsWith(word))
      if (ending !== undefined) expect(row.kind, key).toBe(kindOfEnding[ending])
    }
  })

  test('a length, rate or angle names its unit in its key', () => {
    const endings: Record<string, string> = { length: 'Mm', rate: 'Vph', angle: 'Deg', duration: 'Hours' }
    for (const [key, row] of rows) {
      const ending = endings[row.kind]
      if (ending !== undefined) expect(key.endsWith(ending), key).toBe(true)
    }
  })
})

describe('every row is complete', () => {
  test.each(rows)('%s says in one sentence what it means', (_key, row) => {
    expect(row.meaning).toMatch(/^[A-Z].{20,}\.$/)
    expect(row.meaning.length).toBeLessThan(240)
  })

  test.each(rows)('%s has a name in each language', (_key, row) => {
    for (const language of languages) {
      expect(row.names[language].length).toBeGreaterThan(0)
      for (const name of row.names[language]) expect(name).toBe(name.trim())
    }
  })

  test('no two choices of a field read alike, so either key or label is recognised', () => {
    for (const [key, row] of rows) {
      if (row.kind !== 'choice') continue
      const folded = new Map<string, string>()
      for (const [choice, label] of Object.entries(row.choices)) {
        for (const word of [choice, label]) {
          expect(folded.get(foldHeading(word)) ?? choice, `${key}: ${word}`).toBe(choice)
          folded.set(foldHeading(word), choice)
        }
      }
    }
  })
})

test('no name, label or key belongs to two fields or lists, whatever its case, accents and punctuation', () => {
  const owner = new Map<string, string>()
  for (const [key, { label, names }] of [...rows, ...Object.entries(listFields)]) {
    // The key of a list is no heading: a column headed `jewels` is the stated total.
    const asKey = key in caliberFields ? [key] : []
    for (const name of [...asKey, label, ...languages.flatMap((language) => names[language])]) {
      const folded = foldHeading(name)
      expect(folded, name).not.toBe('')
      expect(owner.get(folded) ?? key, `${name} names both`).toBe(key)
      owner.set(folded, key)
    }
  }
})

test('the usual range lies within the possible one', () => {
  for (const [key, row] of rows) {
    if (!('usual' in row)) continue
    expect(row.possible[0], key).toBeLessThan(row.possible[1])
    expect(row.usual[0], key).toBeLessThanOrEqual(row.usual[1])
    expect(row.usual[0], key).toBeGreaterThanOrEqual(row.possible[0])
    expect(row.usual[1], key).toBeLessThanOrEqual(row.possible[1])
  }
})

test('the customary rates are usual', () => {
  // Last-stage table of customary rates, from memory of the trade; 18,000 and 14,400: The Keystone,
  // Watch and Clock Escapements (about 1904), p. 74 and 139.
  const [low, high] = caliberFields.beatRateVph.usual
  for (const rate of [14400, 16200, 18000, 19800, 21600, 25200, 28800, 36000]) {
    expect(rate).toBeGreaterThanOrEqual(low)
    expect(rate).toBeLessThanOrEqual(high)
  }
})
