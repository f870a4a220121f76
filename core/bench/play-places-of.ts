import { hasFourthArbor } from '../formulas/fourth-arbor.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { type PlayPlace, playPlaceKeys } from './play-places.ts'
import type { PlayMovement } from './play-standard.ts'

/**
 * The kind of movement that a caliber is, as far as its escapement tells: a cylinder has a rule of its own.
 * @example
 * playMovementOf({ escapement: 'cylinder' }) // 'cylinder'
 */
export const playMovementOf = ({ escapement }: CaliberValues): PlayMovement =>
  escapement === 'cylinder' ? 'cylinder' : 'watch'

const leverless: readonly (CaliberValues['escapement'] | undefined)[] = ['cylinder', 'duplex', 'detent', 'verge']

/**
 * The places of a caliber whose play can be tried: those of its train, and a lever where its escapement has one. Where
 * nothing is known of an arbor that every usual train has, it is there.
 * @example
 * playPlacesOf({ escapement: 'cylinder' }) // ['balance', 'escape', 'fourth', 'third', 'centre', 'barrel', 'barrelArbor']
 */
export const playPlacesOf = (values: CaliberValues): readonly PlayPlace[] => {
  const there: Readonly<Partial<Record<PlayPlace, boolean>>> = {
    intermediate: values.intermediatePinion !== undefined || values.intermediateWheel !== undefined,
    fourth: hasFourthArbor(values) !== false,
    fifth: values.fifthPinion !== undefined || values.fifthWheel !== undefined,
    sweep: values.secondsDisplay === 'centre-indirect',
    lever: !leverless.includes(values.escapement),
  }
  return playPlaceKeys.filter((place) => there[place] !== false)
}
