/**
 * Hours of going that a number of barrel turns gives.
 *
 * t = turns × hours per barrel turn.
 * Units: turns of the barrel, hours per turn; result in hours.
 * @validity Going barrels; turns are the usable ones (stop work) or the theoretical development, and the result is of the same kind.
 * @source W. Derham, The Artificial Clock-maker, 1696, p. 121; W. L. Goodrich, The Modern Clock, 1905, p. 259.
 * @example
 * goingHours(5.5, 7.25) // 39.875
 */
export const goingHours = (barrelTurns: number, hoursPerTurn: number): number => barrelTurns * hoursPerTurn
