import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { partNames } from '../fields/part-names.ts'
import type { Depth } from '../record/caliber.ts'
import { foldedName } from '../record/folded-name.ts'
import { namesOf } from '../record/headings.ts'

/** The fields that hold a count of teeth or leaves. */
export const toothedFields = [
  'barrelTeeth',
  'intermediatePinion',
  'intermediateWheel',
  'centrePinion',
  'centreWheel',
  'thirdPinion',
  'thirdWheel',
  'fourthPinion',
  'fourthWheel',
  'fifthPinion',
  'fifthWheel',
  'escapePinion',
  'escapeTeeth',
  'sweepDriver',
  'sweepPinion',
  'cannonPinion',
  'minuteWheel',
  'minutePinion',
  'hourWheel',
] as const satisfies readonly CaliberFieldKey[]
export type ToothedField = (typeof toothedFields)[number]

/** The pinion on the arbor of a wheel: what another wheel drives where a handbook names the wheel alone. */
const pinionBeside: Partial<Readonly<Record<ToothedField, ToothedField>>> = {
  intermediateWheel: 'intermediatePinion',
  centreWheel: 'centrePinion',
  thirdWheel: 'thirdPinion',
  fourthWheel: 'fourthPinion',
  fifthWheel: 'fifthPinion',
  escapeTeeth: 'escapePinion',
}

const { barrel, greatWheel } = partNames
const fieldsByName: ReadonlyMap<string, ToothedField> = new Map(
  toothedFields.flatMap((key) => {
    const more = key === 'barrelTeeth' ? [barrel, greatWheel].flatMap(({ names }) => Object.values(names).flat()) : []
    const pinion = pinionBeside[key]
    return [
      ...[...namesOf(key), ...more].map((name) => [foldedName(name), key] as const),
      ...(pinion === undefined ? [] : [[foldedName(`${caliberFields[key].label} pinion`), pinion] as const]),
    ]
  }),
)

/** The two toothed parts of a depth by the fields that hold their counts; undefined where a name is not known. */
export interface DepthParts {
  readonly driver?: ToothedField
  readonly driven?: ToothedField
}

/**
 * Which counts a depth is between, in any of the four languages. A wheel that is driven by a wheel stands for the pinion
 * on its arbor, and a minute wheel that drives the hour wheel for its pinion.
 * @example
 * depthParts({ driver: 'Minutenrad', driven: 'Third wheel' }) // { driver: 'centreWheel', driven: 'thirdPinion' }
 */
export const depthParts = ({ driver, driven }: Pick<Depth, 'driver' | 'driven'>): DepthParts => {
  const first = fieldsByName.get(foldedName(driver))
  const second = fieldsByName.get(foldedName(driven))
  const pinion = second === undefined ? undefined : pinionBeside[second]
  const wheelDrives = first !== undefined && !first.endsWith('Pinion')
  if (first === 'minuteWheel' && second === 'hourWheel') return { driver: 'minutePinion', driven: second }
  return {
    ...(first && { driver: first }),
    ...(second && { driven: wheelDrives && pinion !== undefined ? pinion : second }),
  }
}
