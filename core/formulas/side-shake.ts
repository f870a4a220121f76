import type { Measured } from '../quantities/measured.ts'
import { plain } from '../quantities/plain.ts'
import { OutsideRange } from './outside-range.ts'
import { positive } from './positive.ts'

/**
 * Side-shake of a pivot: how far it can be moved across its hole.
 *
 * s = d(hole) − d(pivot).
 * Units: mm (or any length) in and out; the whole play from one side to the other.
 * @validity A round hole and a round pivot, each measured where the pivot bears; an oval hole has another side-shake
 * across than along.
 * @source Definition, common practice.
 * @throws OutsideRange where a size is not above zero, or the pivot is larger than its hole.
 * @example
 * sideShake(0.128, 0.11) // 0.018
 */
export const sideShake = (holeMm: number, pivotMm: number): number => {
  positive('holeMm', holeMm)
  positive('pivotMm', pivotMm)
  if (pivotMm > holeMm) throw new OutsideRange('pivot-fills-hole', { holeMm, pivotMm })
  return plain(holeMm - pivotMm)
}

/**
 * Side-shake with its limits, from a hole and a pivot that may each be read wrong.
 *
 * s = d(hole) − d(pivot), from least hole less greatest pivot to greatest hole less least pivot, never below zero.
 * Units: mm (or any length) in and out.
 * @validity As for the side-shake; the two readings may both be off at once and the worst way, so their errors add.
 * @source Derived here from the definition.
 * @throws OutsideRange where a size is not above zero, or the pivot is read larger than its hole.
 * @example
 * sideShakeBetween({ value: 0.128, low: 0.126, high: 0.13 }, { value: 0.11, low: 0.109, high: 0.111 }) // { value: 0.018, low: 0.015, high: 0.021 }
 */
export const sideShakeBetween = (hole: Measured, pivot: Measured): Measured => ({
  value: sideShake(hole.value, pivot.value),
  low: Math.max(0, plain(hole.low - pivot.high)),
  high: plain(hole.high - pivot.low),
})
