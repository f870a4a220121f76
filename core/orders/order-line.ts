import { z } from 'zod'
import { stockSpringSchema } from '../springs/stock-spring.ts'

/** How far an order has come. */
export const orderStates = ['open', 'ordered', 'received'] as const
export type OrderState = (typeof orderStates)[number]

/** What is known of a spring to be ordered; sizes in millimetres. */
const orderedSpringSchema = stockSpringSchema
  .pick({ heightMm: true, thicknessMm: true, lengthMm: true, barrelMm: true, end: true, material: true })
  .loose()
export type OrderedSpring = z.infer<typeof orderedSpringSchema>

/**
 * A line of the order list: a spring by its sizes, or a part by its number, for a caliber, with where its specification
 * comes from. Loose: what only a newer version knows is kept.
 */
export const orderLineSchema = z.looseObject({
  kind: z.enum(['spring', 'part']),
  /** What is to be ordered, as it would be written to a supplier. */
  what: z.string().min(1).max(400),
  quantity: z.int().min(1).max(9999),
  /** The sizes behind `what`, so that they can be written as another supplier writes them. */
  spring: orderedSpringSchema.optional(),
  /** The old gauge number of the spring exactly as printed; never made from sizes, nor sizes from it. */
  gauge: z.string().max(200).optional(),
  /** The number of the part in the parts list of its caliber. */
  number: z.string().max(200).optional(),
  /** Whose part or spring it is. */
  caliber: z.looseObject({ maker: z.string().max(200), designation: z.string().max(200) }).optional(),
  /** The number and list of the supplier, where one was chosen. */
  supplierRef: z.string().max(200).optional(),
  tray: z.string().max(200).optional(),
  /** Where the specification stands: the source and its page. */
  source: z.string().max(400).optional(),
  page: z.string().max(40).optional(),
  note: z.string().max(1000).optional(),
  state: z.enum(orderStates),
  /** True once what was received lies in the tray. */
  bookedIn: z.boolean().optional(),
  /** When it was put on the list, ISO 8601 in UTC. */
  at: z.string().max(40),
})
export type OrderLine = z.infer<typeof orderLineSchema>

const newOrderLineSchema = orderLineSchema.omit({ at: true, quantity: true, state: true })
/** A line before it is put on the list, which gives it its moment. */
export type NewOrderLine = z.infer<typeof newOrderLineSchema>
