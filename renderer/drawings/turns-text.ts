import type Fraction from 'fraction.js'

const figure = (fraction: Fraction): string =>
  fraction.d <= 12n ? fraction.toFraction(true) : String(Number(fraction.valueOf().toFixed(2)))

/** How fast an arbor turns: `60 turns/h`, or `1 turn in 8 h` where it is slower than one an hour. */
export const turnsText = (turnsPerHour: Fraction | null): string => {
  if (turnsPerHour === null) return 'turns not known'
  if (turnsPerHour.valueOf() < 1) return `1 turn in ${figure(turnsPerHour.inverse())} h`
  return `${figure(turnsPerHour)} ${turnsPerHour.equals(1) ? 'turn' : 'turns'}/h`
}
