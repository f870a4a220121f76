import type { GlossaryKey } from './glossary.ts'

interface NamingTrap {
  /** The words that it concerns. */
  readonly keys: readonly GlossaryKey[]
  readonly says: string
}

const traps: readonly NamingTrap[] = [
  {
    keys: ['centreWheel', 'centrePinion', 'minuteWheel', 'minutePinion'],
    says: 'German Minutenrad is the centre wheel, not the minute wheel. The minute wheel of the motion work is the Wechselrad, in French the roue de minuterie.',
  },
  {
    keys: ['crownWheel', 'vergeEscapement', 'verge', 'escapeTeeth'],
    says: 'Kronrad, kroonrad and crown wheel each mean two wheels: the winding wheel under the barrel bridge, and the escape wheel of a verge watch. In a book older than keyless winding it is the escape wheel.',
  },
  {
    keys: ['hourWheel', 'cannonPinion'],
    says: 'Old English clock books call the wheel on the cannon the hour wheel, because it turns once in an hour (so the Encyclopaedia Britannica of 1911, p. 537). Here the hour wheel is the one that carries the hour hand.',
  },
  {
    keys: ['centreWheel', 'hourWheel'],
    says: 'The centre wheel turns once in an hour and carries the minute hand. Where a book says that it turns once in twelve hours, it has mistaken it for the hour wheel.',
  },
  {
    keys: ['balance', 'balanceStaff', 'balanceCock'],
    says: 'German books print both Unruh and Unruhe for the balance, sometimes on one page.',
  },
  {
    keys: ['rate', 'escapement', 'goingHours'],
    says: 'German Gang is the rate, and in older books the escapement too: Gangrad is the escape wheel. Gangdauer and Gangreserve are how long the watch goes.',
  },
  {
    keys: ['stopWork', 'stopWorkTurns', 'setting'],
    says: 'German Stellung alone is the stop-work of the barrel; Zeigerstellung is the setting of the hands.',
  },
  {
    keys: ['vibration', 'oscillation', 'beatRateVph'],
    says: 'A rate of 18 000 counts vibrations, that is half oscillations. A book that counts whole oscillations prints 9 000 for the same watch.',
  },
]

/**
 * What easily misleads in the names of a field or part, one sentence or two for each trap.
 *
 * @example
 * namingTraps('balance').length // 1
 */
export const namingTraps = (key: GlossaryKey): readonly string[] =>
  traps.filter(({ keys }) => keys.includes(key)).map(({ says }) => says)
