import { caliberFields } from '../fields/caliber-fields.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { type SpringOrder, springLine } from '../springs/spring-line.ts'

/** How the owner wants a spring written where it is copied. */
export interface SpringWriting {
  readonly order: SpringOrder
  readonly decimalMark: '.' | ','
  readonly withName: boolean
}

/** Unit after the figures, where all of them have one and the same. */
const units: Readonly<Partial<Record<SpringOrder, string>>> = {
  'height-thickness-length-barrel': ' mm',
  'height-thickness-length': ' mm',
  inches: ' in',
}

/**
 * A caliber's spring as text to order by, in the order that its owner prefers.
 * @example
 * copiedSpring({ springHeightMm: 2.4, springThicknessMm: 0.18, springLengthMm: 430, barrelInsideMm: 15, springEnd: 'tongue' }, 'Verrin 17-220', { order: 'height-thickness-length-barrel', decimalMark: '.', withName: true }) // 'Verrin 17-220: 2.40 × 0.18 × 430 × 15.0 mm, tongue'
 */
export const copiedSpring = (
  { springHeightMm, springThicknessMm, springLengthMm, barrelInsideMm, springEnd }: CaliberValues,
  name: string,
  { order, decimalMark, withName }: SpringWriting,
): string => {
  const sizes = {
    heightMm: springHeightMm,
    thicknessMm: springThicknessMm,
    lengthMm: springLengthMm,
    barrelMm: barrelInsideMm,
  }
  const end = springEnd === undefined ? '' : `, ${caliberFields.springEnd.choices[springEnd]}`
  return `${withName ? `${name}: ` : ''}${springLine(sizes, order, decimalMark)}${units[order] ?? ''}${end}`
}
