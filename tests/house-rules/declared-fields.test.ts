import { expect, test } from 'vitest'
import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'
import { proofs } from '../../core/proofs/index.ts'
import { judgeProof } from '../../core/proofs/prove.ts'
import type { Caliber, CaliberValues } from '../../core/record/caliber.ts'
import { caliberOf } from '../support/caliber-of.ts'
import { caliberPrinted, soundWatch } from '../support/caliber-printed.ts'
import { caliberWithLists } from '../support/caliber-with-lists.ts'

const keys = Object.keys(caliberFields) as CaliberFieldKey[]

/** A value for every field: that of the sound watch, else a choice, a usual figure or a word. */
const everyValue: CaliberValues = {
  ...Object.fromEntries(
    Object.entries(caliberFields).map(([key, field]) => {
      if ('choices' in field) return [key, Object.keys(field.choices)[0]]
      return [key, 'usual' in field ? Math.ceil(field.usual[0]) : '17-220']
    }),
  ),
  ...caliberPrinted(soundWatch).values,
}

/** Kinds that look at other fields: a clock without a fourth arbor is one. */
const kinds: readonly CaliberValues[] = [
  everyValue,
  { ...everyValue, secondsDisplay: 'centre-indirect' },
  { ...everyValue, springEnd: 'slipping-bridle', bridleThicknessMm: 0.1 },
  { ...everyValue, dialHours: '24' },
  {
    secondsDisplay: 'small',
    beatRateVph: 3600,
    centreWheel: 64,
    thirdPinion: 8,
    thirdWheel: 60,
    escapePinion: 8,
    escapeTeeth: 30,
  },
]

const counts = keys.filter((key) => caliberFields[key].kind === 'count')
const lists = caliberWithLists({
  jewels: [{ place: 'balance', kind: 'hole', count: 2 }],
  lubrication: [{ place: 'balance', lubricant: 'thin oil' }],
  depths: counts.flatMap((driver) =>
    counts.map((driven) => ({
      driver: caliberFields[driver].label,
      driven: caliberFields[driven].label,
      driverPitchMm: 9,
      drivenPitchMm: 1.2,
      centreDistanceMm: 5.1,
    })),
  ),
  stripOrder: [{ part: 'balance cock' }],
}).lists

/** Looked at without being judged: they only tell whether a train that states no fourth arbor has one. */
const besides: Readonly<Record<string, readonly CaliberFieldKey[]>> = {
  'seconds-hand-turns-once-a-minute': ['beatRateVph', 'escapeTeeth'],
}

/** The caliber with a note of every value that is looked at. */
const watched = (values: CaliberValues, seen: Set<string>): Caliber => ({
  values: new Proxy(values, {
    get: (all, key) => {
      seen.add(String(key))
      return Reflect.get(all, key)
    },
  }),
  readings: {},
  lists,
  base: caliberOf(everyValue),
})

test.each(proofs.map((proof) => [proof.id, proof] as const))(
  '%s looks at the fields that it declares, and at no other',
  (id, proof) => {
    const seen = new Set<string>()
    for (const values of kinds) {
      judgeProof(proof, watched(values, seen))
      for (const left of keys)
        judgeProof(proof, watched(Object.fromEntries(Object.entries(values).filter(([key]) => key !== left)), seen))
    }
    expect([...seen].toSorted()).toEqual(
      [...new Set([...proof.needs, ...proof.uses, ...(besides[id] ?? [])])].toSorted(),
    )
  },
)
