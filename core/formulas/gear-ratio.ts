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
  const product = (counts: readonly number[]) => counts.reduce((so, count) => so * BigInt(count), 1n)
  return new Fraction(product(drivers), product(driven))
}
