import Fraction from 'fraction.js'

/**
 * Turns of the last driven arbor for one turn of the first driver, exactly.
 *
 * ratio = (W1 × W2 × …) / (p1 × p2 × …), wheels that drive over pinions that are driven.
 * Units: counts of teeth and leaves in, turns per turn out.
 * @validity Plain gearing, any number of pairs, whole positive counts; an empty chain gives 1.
 * @source W. Derham, The Artificial Clock-maker, 1696, pp. 10–13; H. R. Playtner, An Analysis of the Lever Escapement, 1910, p. 7.
 * @example
 * gearRatio([80, 75], [10, 10]).toFraction() // '60'
 */
export const gearRatio = (drivers: readonly number[], driven: readonly number[]): Fraction => {
  const above = drivers.reduce((product, count) => product * count, 1)
  const below = driven.reduce((product, count) => product * count, 1)
  if (Number.isSafeInteger(above) && Number.isSafeInteger(below)) return new Fraction(above, below)
  const exact = (counts: readonly number[]) => counts.reduce((product, count) => product * BigInt(count), 1n)
  return new Fraction(exact(drivers), exact(driven))
}
