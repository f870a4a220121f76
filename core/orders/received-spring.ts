import { springLine } from '../springs/spring-line.ts'
import type { StockSpring } from '../springs/stock-spring.ts'
import type { OrderLine } from './order-line.ts'

/**
 * The spring that a line brings into the owner's own tray, under the number it was ordered by, or its sizes where it had
 * none; null where the line is no spring, is not received, or lies in the tray already.
 * @example
 * receivedSpring({ kind: 'part', what: 'click', quantity: 1, state: 'received', at: '2031-05-01' }) // null
 */
export const receivedSpring = ({ kind, state, spring, bookedIn, supplierRef }: OrderLine): StockSpring | null =>
  kind !== 'spring' || state !== 'received' || spring === undefined || bookedIn === true
    ? null
    : { ...spring, supplierRef: supplierRef ?? springLine(spring, 'height-thickness-length-barrel') }
