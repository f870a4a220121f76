import { z } from 'zod'
import { caliberFields } from '../fields/caliber-fields.ts'

type EndOfTable = keyof (typeof caliberFields)['springEnd']['choices']
type MaterialOfTable = keyof (typeof caliberFields)['springMaterial']['choices']

const size = z.number().positive()

/**
 * A spring in the owner's tray or on a supplier's list, as the library file holds it. Sizes in millimetres.
 * Loose: what only a newer version knows of a spring is kept.
 */
export const stockSpringSchema = z.looseObject({
  /** The list that the spring is on: the tray itself where none is named, or a supplier's. */
  tray: z.string().max(200).optional(),
  /** The number under which it is ordered; unique on its list. */
  supplierRef: z.string().min(1).max(200),
  heightMm: size.max(120),
  thicknessMm: size.max(3),
  /** Some lists give the barrel in its place. */
  lengthMm: size.max(20_000).optional(),
  /** The barrel for which it is sold. */
  barrelMm: size.max(300).optional(),
  end: z.enum(Object.keys(caliberFields.springEnd.choices) as [EndOfTable, ...EndOfTable[]]).optional(),
  material: z
    .enum(Object.keys(caliberFields.springMaterial.choices) as [MaterialOfTable, ...MaterialOfTable[]])
    .optional(),
  /** How many lie in the tray; on a supplier's list, how many are offered, absent where that is not said. */
  inStock: z.int().min(0).optional(),
  /** As printed, with its currency: `12,50 €`. */
  price: z.string().max(80).optional(),
  note: z.string().max(1000).optional(),
})
export type StockSpring = z.infer<typeof stockSpringSchema>
