import Fraction from 'fraction.js'
import { moduleOfWheel } from '../formulas/module-of-wheel.ts'
import type { Quantity } from '../quantities/quantity.ts'

/** A printed size that comes to so many modules: a pitch diameter to its count, a centre distance to half of both counts. */
export interface SizeInModules {
  readonly name: string
  readonly printed: Quantity
  readonly modules: number
}

/** Two sizes of one depth against each other. */
export interface ModulePair {
  readonly first: SizeInModules
  readonly second: SizeInModules
  /** How far apart the spans within which both were printed lie, in mm of module; nought or less where they meet. */
  readonly gapMm: number
}

/** A size that was not read from print stands for itself. */
export const asPrinted = (value: number): Quantity => ({ value, exact: new Fraction(value), unit: 'mm', halfStep: 0 })

/** The module that a size gives as it was printed. */
export const moduleOf = ({ printed, modules }: SizeInModules): number => moduleOfWheel(printed.value, modules)

type End = 'low' | 'high'

const end = ({ printed, modules }: SizeInModules, which: End): number =>
  (printed[which] ?? printed.value + (which === 'low' ? -printed.halfStep : printed.halfStep)) / modules

const exactEnd = ({ printed, modules }: SizeInModules, which: End): Fraction => {
  const limit = printed[which]
  const step = new Fraction(printed.halfStep)
  const mm = limit !== undefined ? new Fraction(limit) : printed.exact[which === 'low' ? 'sub' : 'add'](step)
  return mm.div(new Fraction(modules))
}

/** Below this share of the module the fractions decide and not binary numbers. */
const nearEdge = 1e-9

const gapBetween = (first: SizeInModules, second: SizeInModules): number => {
  const [lower, upper] = moduleOf(first) <= moduleOf(second) ? [first, second] : [second, first]
  const gap = end(upper, 'low') - end(lower, 'high')
  if (Math.abs(gap) > nearEdge * moduleOf(lower)) return gap
  return exactEnd(upper, 'low').sub(exactEnd(lower, 'high')).valueOf()
}

/**
 * The two sizes of a depth that lie furthest apart in module, beyond the rounding with which they were printed.
 * Where none of them do, one module explains them all. Undefined for fewer than two sizes.
 * @example
 * furthestApart([{ name: 'wheel', printed: asPrinted(8), modules: 80 }, { name: 'pinion', printed: asPrinted(1), modules: 10 }])?.gapMm // 0
 */
export const furthestApart = (sizes: readonly SizeInModules[]): ModulePair | undefined => {
  let furthest: ModulePair | undefined
  sizes.forEach((first, at) => {
    for (const second of sizes.slice(at + 1)) {
      const gapMm = gapBetween(first, second)
      if (furthest === undefined || gapMm > furthest.gapMm) furthest = { first, second, gapMm }
    }
  })
  return furthest
}
