import type { Part } from '../record/caliber.ts'
import type { NewOrderLine } from './order-line.ts'

interface Name {
  readonly maker: string
  readonly designation: string
}

/** A line for a part of a caliber's parts list, which may be that of its base: the list is named as its source. */
export const orderOfPart = ({ part, number, note }: Part, caliber: Name, listOf: string): NewOrderLine => ({
  kind: 'part',
  what: part.slice(0, 400),
  ...(number === undefined || number === '' ? {} : { number: number.slice(0, 200) }),
  caliber: { maker: caliber.maker, designation: caliber.designation },
  source: `parts list of ${listOf}`.slice(0, 400),
  ...(note === undefined || note === '' ? {} : { note: note.slice(0, 1000) }),
})
