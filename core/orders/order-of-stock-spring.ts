import type { CaliberValues } from '../record/caliber.ts'
import { springLine } from '../springs/spring-line.ts'
import { orderedSpring } from '../wording/ordered-spring.ts'
import type { NewOrderLine, OrderedSpring } from './order-line.ts'

/** Why this spring was chosen: as the caliber specifies it, in place of that one, or for a caliber that specifies none. */
type ChosenAs = 'specified' | 'substitute' | 'estimate'

const noteOf = (as: ChosenAs, values: CaliberValues): string | undefined => {
  if (as === 'specified') return undefined
  if (as === 'estimate') return 'estimated, not specified'
  const sizes = {
    heightMm: values.springHeightMm,
    thicknessMm: values.springThicknessMm,
    lengthMm: values.springLengthMm,
  }
  return `instead of the specified ${springLine(sizes, 'height-thickness-length')} mm`
}

/** A spring chosen for a caliber: from the tray or a list by its number, or by its sizes alone where it is yet to be found. */
type ChosenSpring = OrderedSpring & { readonly supplierRef?: string; readonly tray?: string | undefined }

/** A line for a spring chosen for a caliber; it says where it is a substitute or an estimate. */
export const orderOfStockSpring = (chosen: ChosenSpring, values: CaliberValues, as: ChosenAs): NewOrderLine => {
  const { tray, supplierRef, heightMm, thicknessMm, lengthMm, barrelMm, end, material } = chosen
  const spring = {
    heightMm,
    thicknessMm,
    ...(lengthMm === undefined ? {} : { lengthMm }),
    ...(barrelMm === undefined ? {} : { barrelMm }),
    ...(end === undefined ? {} : { end }),
    ...(material === undefined ? {} : { material }),
  }
  const note = noteOf(as, values)
  return {
    kind: 'spring',
    what: orderedSpring(spring),
    spring,
    ...(supplierRef === undefined ? {} : { supplierRef }),
    ...(tray === undefined ? {} : { tray }),
    caliber: { maker: values.maker ?? '', designation: values.designation ?? '' },
    ...(note === undefined ? {} : { note }),
  }
}
