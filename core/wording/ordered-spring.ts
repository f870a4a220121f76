import { caliberFields } from '../fields/caliber-fields.ts'
import type { OrderedSpring } from '../orders/order-line.ts'
import { type SpringOrder, springLine, springOrders } from '../springs/spring-line.ts'

/** What the figures stand in: hundredths that are not called so are taken for millimetres. */
const units: Readonly<Record<SpringOrder, string>> = {
  'height-thickness-length-barrel': ' mm',
  'height-thickness-length': ' mm',
  'tenths-hundredths-length': ' (tenths × hundredths × mm)',
  'height-hundredths-barrel': ' (mm × hundredths × barrel in mm)',
  inches: ' in',
}

/**
 * A spring as it is written to a supplier: its figures, then barrel, length, end and material where the figures do not
 * say them, and its old gauge number exactly as printed.
 * @example
 * orderedSpring({ heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360, barrelMm: 10.5, end: 'hole' }) // '1.50 × 0.105 × 360 mm, barrel 10.5 mm, end: hole'
 */
export const orderedSpring = (
  spring: OrderedSpring,
  gauge?: string,
  order: SpringOrder = 'height-thickness-length',
  decimalMark: '.' | ',' = '.',
): string => {
  const parts: readonly string[] = springOrders[order].parts
  const said = (key: string): boolean => parts.some((part) => part.startsWith(key))
  const mm = (value: number): string => String(Number(value.toFixed(2))).replace('.', decimalMark)
  return [
    `${springLine(spring, order, decimalMark)}${units[order]}`,
    spring.lengthMm !== undefined && !said('length') && `length ${mm(spring.lengthMm)} mm`,
    spring.barrelMm !== undefined && !said('barrel') && `barrel ${mm(spring.barrelMm)} mm`,
    spring.end !== undefined && `end: ${caliberFields.springEnd.choices[spring.end]}`,
    spring.material !== undefined && caliberFields.springMaterial.choices[spring.material],
    gauge !== undefined && `gauge as printed: ${gauge}`,
  ]
    .filter((text) => text !== false)
    .join(', ')
}
