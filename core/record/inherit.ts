import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import type { ListKey } from '../fields/list-fields.ts'
import type { Caliber, CaliberLists } from './caliber.ts'
import type { Reading } from './reading.ts'

/** What names a caliber or says of it alone stays with it. */
const isInherited = (key: CaliberFieldKey): boolean => caliberFields[key].group !== 'identity'

const motionWork = ['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel'] as const

/** What a base's value hangs together with: a variant that states one of these has its own, or none. */
const belongsWith: Partial<Readonly<Record<CaliberFieldKey, readonly CaliberFieldKey[]>>> = {
  dialHours: motionWork,
  diameterMm: ['shape', 'lengthMm', 'widthMm'],
  lengthMm: ['shape', 'diameterMm'],
  widthMm: ['shape', 'diameterMm'],
  sweepDriver: ['secondsDisplay'],
  sweepPinion: ['secondsDisplay'],
  bridleThicknessMm: ['springEnd'],
  springGauge: ['springThicknessMm'],
}

const states = ({ values, readings }: Caliber, key: CaliberFieldKey): boolean =>
  values[key] !== undefined || readings[key] !== undefined

/** A variant with another number of jewels has them in other places, so a total and its list are inherited together. */
const statesJewels = ({ values, lists }: Caliber): boolean =>
  values.jewelsStated !== undefined || lists.jewels.length > 0

const ownOr = <K extends ListKey>(list: K, own: CaliberLists, base: CaliberLists): CaliberLists[K] =>
  own[list].length > 0 ? own[list] : base[list]

/**
 * The caliber with the fields and lists that it does not state itself taken from its base. Of the base's readings only
 * the chosen one comes along: what its sources disagree on is the base's own affair.
 */
export const inherit = (caliber: Caliber, base: Caliber): Caliber => {
  const jewels = !statesJewels(caliber)
  const inheritedKeys = (Object.keys(base.values) as CaliberFieldKey[]).filter(
    (key) =>
      isInherited(key) &&
      base.values[key] !== undefined &&
      !states(caliber, key) &&
      !belongsWith[key]?.some((other) => states(caliber, other)) &&
      (jewels || key !== 'jewelsStated'),
  )
  const values: Record<string, unknown> = { ...caliber.values }
  const readings: Record<string, readonly Reading[]> = { ...caliber.readings }
  for (const key of inheritedKeys) {
    values[key] = base.values[key]
    const chosen = (base.readings[key] as readonly Reading[] | undefined)?.filter((reading) => reading.chosen)
    if (chosen && chosen.length > 0) readings[key] = chosen
  }
  const { lists, overrules } = caliber
  // Every value and reading stands under the key under which the base had it.
  return {
    values,
    readings,
    lists: {
      jewels: jewels ? base.lists.jewels : lists.jewels,
      lubrication: ownOr('lubrication', lists, base.lists),
      depths: ownOr('depths', lists, base.lists),
      parts: ownOr('parts', lists, base.lists),
      stripOrder: ownOr('stripOrder', lists, base.lists),
    },
    ...(overrules && { overrules }),
    base,
    inheritedKeys,
  } as Caliber
}

/** A caliber over its bases, the nearest first: each takes from the next what it does not state itself. */
export const inheritFrom = (caliber: Caliber, bases: readonly Caliber[]): Caliber => {
  const [base, ...further] = bases
  return base === undefined ? caliber : inherit(caliber, inheritFrom(base, further))
}

/** The base that states an inherited field, up the line; undefined where the caliber states it itself. */
export const originOf = ({ base, inheritedKeys }: Caliber, key: CaliberFieldKey): Caliber | undefined =>
  base !== undefined && inheritedKeys?.includes(key) ? (originOf(base, key) ?? base) : undefined
