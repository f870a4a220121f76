import { hasFourthArbor } from '../formulas/fourth-arbor.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { type PlayPlace, playPlaceKeys } from './play-places.ts'
import type { PlayMovement } from './play-standard.ts'

const otherThanLever: Readonly<Partial<Record<NonNullable<CaliberValues['escapement']>, PlayMovement>>> = {
  cylinder: 'cylinder',
  duplex: 'other-watch',
  detent: 'other-watch',
  verge: 'other-watch',
}

/**
 * The kind of movement that a caliber is, as far as its escapement tells: a cylinder has a rule of its own.
 * @example
 * playMovementOf({ escapement: 'cylinder' }) // 'cylinder'
 */
export const playMovementOf = ({ escapement }: CaliberValues): PlayMovement =>
  (escapement && otherThanLever[escapement]) ?? 'watch'

/**
 * The places without the lever where a movement has none.
 * @example
 * leverWhereThereIsOne(['balance', 'lever', 'escape'], 'cylinder') // ['balance', 'escape']
 */
export const leverWhereThereIsOne = (places: readonly PlayPlace[], movement: PlayMovement): readonly PlayPlace[] =>
  movement === 'watch' || movement === 'clock' ? places : places.filter((place) => place !== 'lever')

/**
 * The places of a caliber whose play can be tried: those of its train, and a lever where such a movement has one. Where
 * nothing is known of an arbor that every usual train has, it is there.
 * @example
 * playPlacesOf({}, 'cylinder') // ['balance', 'escape', 'fourth', 'third', 'centre', 'barrel', 'barrelArbor']
 */
export const playPlacesOf = (values: CaliberValues, movement: PlayMovement): readonly PlayPlace[] => {
  const there: Readonly<Partial<Record<PlayPlace, boolean>>> = {
    intermediate: values.intermediatePinion !== undefined || values.intermediateWheel !== undefined,
    fourth: hasFourthArbor(values) !== false,
    fifth: values.fifthPinion !== undefined || values.fifthWheel !== undefined,
    sweep: values.secondsDisplay === 'centre-indirect',
  }
  return leverWhereThereIsOne(playPlaceKeys, movement).filter((place) => there[place] !== false)
}
