import { z } from 'zod'

/** How far an order has come. */
export const orderStates = ['open', 'ordered', 'received'] as const
export type OrderState = (typeof orderStates)[number]

/**
 * A line of the order list: a spring by its sizes, or a part by its number, for a caliber, with where its specification
 * comes from. Loose: what only a newer version knows is kept.
 */
export const orderLineSchema = z.looseObject({
  kind: z.enum(['spring', 'part']),
  /** What is to be ordered, as it would be written to a supplier. */
  what: z.string().min(1).max(400),
  quantity: z.int().min(1).max(9999),
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
  /** When it was put on the list, ISO 8601 in UTC. */
  at: z.string().max(40),
})
export type OrderLine = z.infer<typeof orderLineSchema>
