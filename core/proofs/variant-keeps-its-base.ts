import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import type { Caliber } from '../record/caliber.ts'
import type { Reading } from '../record/reading.ts'
import { readingsMeet } from '../record/reading-conflicts.ts'
import { defineProof } from './define-proof.ts'
import type { WorkingStep } from './proof.ts'

const barrelSizes: readonly CaliberFieldKey[] = ['barrelInsideMm', 'barrelDepthMm', 'barrelArborMm', 'stopWorkTurns']

/** What a variant takes over from its base: the going train and the barrel. A spring is changed with the winding. */
const kept: readonly CaliberFieldKey[] = [
  ...(Object.keys(caliberFields) as CaliberFieldKey[]).filter((key) => caliberFields[key].group === 'train'),
  ...barrelSizes,
]

const chosenOf = (readings: Caliber['readings'], key: CaliberFieldKey, value: unknown): Reading => {
  const chosen = (readings[key] as readonly Reading[] | undefined)?.find((reading) => reading.chosen)
  return chosen ?? { printed: String(value), value: Number(value), chosen: true }
}

/** A variant has the going train and the barrel of its base. */
export const variantKeepsItsBase = defineProof({
  id: 'variant-keeps-its-base',
  title: 'Variant keeps its base',
  meaning:
    'A variant keeps train and barrel of the caliber it is based on; where it states another figure, one of the two may be misprinted.',
  needs: ['basedOn'],
  uses: kept,
  lists: [],
  appliesTo: (values) => values.basedOn !== undefined,
  tolerance: {
    allows: 'half of the last digit printed on either side; any other difference is doubtful',
    why:
      'A maker derives a variant by what lies outside the train: jewels, balance spring, motion work, winding. Another ' +
      'train or barrel does happen, so a difference is a reason to look and not a fault.',
  },
  source: 'common practice',
  validity: 'Variants whose base is at hand. The mainspring itself and its hours are not compared.',
  reasons: ['base-kept', 'base-unstated', 'base-differs'],
  judge: (values, { readings, base, inheritedKeys = [] }) => {
    if (base === undefined) return { outcome: 'cannot-check', missing: ['basedOn'] }
    const compared = kept.filter(
      (key) =>
        values[key as keyof typeof values] !== undefined &&
        base.values[key] !== undefined &&
        !inheritedKeys.includes(key),
    )
    const pairs = compared.map((key) => ({
      key,
      own: chosenOf(readings, key, values[key as keyof typeof values]),
      of: chosenOf(base.readings, key, base.values[key]),
    }))
    const differing = pairs.filter(({ own, of }) => !readingsMeet(own, of))
    const working = differing.map(
      ({ key, own, of }): WorkingStep => ({
        formula: `${onPaper(Number(own.value))} − ${onPaper(Number(of.value))}`,
        where: { field: key, variant: own.printed, base: of.printed },
        gives: plain(Number(own.value) - Number(of.value)),
      }),
    )
    return {
      outcome: differing.length === 0 ? 'agrees' : 'doubtful',
      stated: null,
      found: null,
      unit: '',
      difference: null,
      allowed: null,
      working,
      reason: differing.length > 0 ? 'base-differs' : compared.length > 0 ? 'base-kept' : 'base-unstated',
      details: { basedOn: values.basedOn, compared: compared.length },
      fields: ['basedOn', ...(differing.length > 0 ? differing.map(({ key }) => key) : compared)],
    }
  },
})
