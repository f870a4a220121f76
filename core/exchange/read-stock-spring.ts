import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { type FieldRead, readField } from '../record/read-field.ts'
import { type StockSpring, stockSpringSchema } from '../springs/stock-spring.ts'

/** The fields of a caliber under whose rules the figures of a spring are read. */
const fieldOf = {
  heightMm: 'springHeightMm',
  thicknessMm: 'springThicknessMm',
  lengthMm: 'springLengthMm',
  barrelMm: 'barrelInsideMm',
  end: 'springEnd',
  material: 'springMaterial',
} as const satisfies Readonly<Partial<Record<keyof StockSpring, CaliberFieldKey>>>
type ReadKey = keyof typeof fieldOf

/** What of a spring cannot be read: its key, its label, and why. */
export interface StockSpringProblem {
  readonly key: string
  readonly label: string
  readonly problem:
    | Extract<FieldRead, { ok: false }>['problem']
    | { readonly code: 'missing' }
    | { readonly code: 'not-a-count'; readonly text: string }
    | { readonly code: 'not-text' }
}

export type StockSpringRead =
  | { readonly ok: true; readonly spring: StockSpring }
  | { readonly ok: false; readonly problem: StockSpringProblem }

const needed = ['supplierRef', 'heightMm', 'thicknessMm'] as const
const labels: Readonly<Record<string, string>> = {
  supplierRef: 'Supplier’s number',
  inStock: 'In stock',
  tray: 'Tray',
  price: 'Price',
  note: 'Note',
}

/**
 * The name of a figure of a spring, as a form or a sentence shows it.
 * @example
 * stockSpringLabel('thicknessMm') // 'Spring thickness'
 */
export const stockSpringLabel = (key: string): string =>
  Object.hasOwn(fieldOf, key) ? caliberFields[fieldOf[key as ReadKey]].label : (labels[key] ?? key)

/**
 * Reads a spring as a file or a table has it: sizes as numbers in millimetres or as printed (`15/10`, `.105`, `0.0041 in`).
 * What only a newer version knows is kept.
 * @example
 * readStockSpring({ supplierRef: 'A 1', heightMm: '15/10', thicknessMm: 0.105 }) // { ok: true, spring: { supplierRef: 'A 1', heightMm: 1.5, thicknessMm: 0.105 } }
 */
export const readStockSpring = (line: Readonly<Record<string, unknown>>): StockSpringRead => {
  const spring: Record<string, unknown> = { ...line }
  const refuse = (key: string, problem: StockSpringProblem['problem']): StockSpringRead => ({
    ok: false,
    problem: { key, label: stockSpringLabel(key), problem },
  })
  for (const key of Object.keys(line)) {
    const value = line[key]
    if (value === undefined || value === null || value === '') delete spring[key]
  }
  for (const key of needed) if (spring[key] === undefined) return refuse(key, { code: 'missing' })
  for (const key of Object.keys(fieldOf) as ReadKey[]) {
    const value = spring[key]
    if (value === undefined) continue
    if (typeof value !== 'number' && typeof value !== 'string') return refuse(key, { code: 'not-text' })
    const read = readField(fieldOf[key], String(value))
    if (!read.ok) return refuse(key, read.problem)
    spring[key] = read.value
  }
  for (const key of ['supplierRef', 'price', 'note', 'tray']) {
    if (typeof spring[key] === 'number') spring[key] = String(spring[key])
  }
  const { inStock } = spring
  if (typeof inStock === 'string' && /^\s*\d+\s*$/.test(inStock)) spring.inStock = Number(inStock)
  const parsed = stockSpringSchema.safeParse(spring)
  if (parsed.success) return { ok: true, spring: parsed.data }
  const key = String(parsed.error.issues[0]?.path[0] ?? '')
  return refuse(key, key === 'inStock' ? { code: 'not-a-count', text: String(inStock) } : { code: 'not-text' })
}
