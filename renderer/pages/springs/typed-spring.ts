import { readStockSpring, type StockSpringProblem } from '../../../core/exchange/read-stock-spring.ts'
import { formatLength } from '../../../core/quantities/format-length.ts'
import type { StockSpring } from '../../../core/springs/stock-spring.ts'
import { stockSpringProblem } from '../../../core/wording/stock-spring-problem.ts'

/** The parts of a spring that are typed, in the order of the form. */
export const typedKeys = [
  'supplierRef',
  'tray',
  'heightMm',
  'thicknessMm',
  'lengthMm',
  'barrelMm',
  'end',
  'material',
  'inStock',
  'price',
  'note',
] as const
export type TypedKey = (typeof typedKeys)[number]
export type TypedSpring = Readonly<Record<TypedKey, string>>

/** A spring as the form begins with it. */
export const typedSpring = (spring: StockSpring | null): TypedSpring => {
  const typed = {} as Record<TypedKey, string>
  for (const key of typedKeys) typed[key] = String(spring?.[key] ?? '')
  return typed
}

/** What one typed part was read as, in millimetres where it is a size, or why it cannot be read. */
export const echoOfTyped = (key: TypedKey, text: string): { readonly echo: string; readonly problem: string } => {
  if (text.trim() === '') return { echo: '', problem: '' }
  const read = readStockSpring({ supplierRef: '?', heightMm: 1, thicknessMm: 0.1, [key]: text })
  if (!read.ok) return { echo: '', problem: stockSpringProblem(read.problem) }
  const value = read.spring[key]
  if (!key.endsWith('Mm') || typeof value !== 'number') return { echo: '', problem: '' }
  return { echo: text.trim() === String(value) ? '' : formatLength(value, 'mm'), problem: '' }
}

/** The spring that was typed, with what else the stored one says; or the first part that cannot be read. */
export const springOfTyped = (
  typed: TypedSpring,
  stored: StockSpring | null,
):
  | { readonly ok: true; readonly spring: StockSpring }
  | { readonly ok: false; readonly key: string; readonly problem: string } => {
  const line = Object.fromEntries(typedKeys.map((key) => [key, typed[key].trim()]))
  const read = readStockSpring({ ...stored, ...line })
  if (read.ok) return read
  const { key }: StockSpringProblem = read.problem
  return { ok: false, key, problem: stockSpringProblem(read.problem) }
}
