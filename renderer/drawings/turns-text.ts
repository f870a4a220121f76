import type Fraction from 'fraction.js'

/** Fractions that have a glyph of their own. */
const glyphs: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/4': '¼',
  '3/4': '¾',
}

const figure = (fraction: Fraction): string =>
  fraction.d <= 12n
    ? fraction.toFraction(true).replace(/ (\d\/\d)$/, (whole, part: string) => glyphs[part] ?? whole)
    : String(Number(fraction.valueOf().toFixed(2)))

/** How fast an arbor turns: `60 turns/h`, or `1 turn in 8 h` where it is slower than one an hour. */
export const turnsText = (turnsPerHour: Fraction | null): string => {
  if (turnsPerHour === null) return 'turns not known'
  if (turnsPerHour.valueOf() < 1) return `1 turn in ${figure(turnsPerHour.inverse())} h`
  return `${figure(turnsPerHour)} ${turnsPerHour.equals(1) ? 'turn' : 'turns'}/h`
}
