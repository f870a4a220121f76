import { positive } from './positive.ts'

/**
 * Least side-shake of a cylinder's pivot in its hole: with less the escapement fails once the oil thickens.
 *
 * s = d(pivot) / 6.
 * Units: mm (or any length) in and out.
 * @validity Cylinder escapements. The book does not say of what it is a sixth: taken of the pivot, the lesser figure; of
 * the hole it would be a fifth of the pivot.
 * @source W. L. Goodrich, The Modern Clock, 1905, p. 167, who credits the rule to Saunier.
 * @throws OutsideRange where the pivot is not above zero.
 * @example
 * cylinderSideShake(0.12) // 0.02
 */
export const cylinderSideShake = (pivotMm: number): number => positive('pivotMm', pivotMm) / 6

/**
 * Size that the pivot of a cylinder usually has.
 *
 * d(pivot) = d(cylinder) / 8, about.
 * Units: mm (or any length) in and out; the cylinder is measured over its body.
 * @validity Cylinder escapements; the book says “about”.
 * @source W. L. Goodrich, The Modern Clock, 1905, p. 167.
 * @throws OutsideRange where the cylinder is not above zero.
 * @example
 * cylinderPivot(0.88) // 0.11
 */
export const cylinderPivot = (cylinderMm: number): number => positive('cylinderMm', cylinderMm) / 8
