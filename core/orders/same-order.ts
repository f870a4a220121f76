import type { NewOrderLine } from './order-line.ts'

const keyOf = ({ kind, what, number, caliber, supplierRef, tray }: NewOrderLine): string =>
  JSON.stringify([kind, what, number, caliber?.maker, caliber?.designation, supplierRef, tray])

/** True where two lines order the same thing for the same caliber from the same supplier. */
export const sameOrder = (one: NewOrderLine, other: NewOrderLine): boolean => keyOf(one) === keyOf(other)
