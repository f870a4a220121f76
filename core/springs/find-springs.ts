import { foldName } from '../record/bases.ts'
import { naturalKey } from '../record/natural-key.ts'
import { readField } from '../record/read-field.ts'
import type { StockSpring } from './stock-spring.ts'

/** The columns by which springs can be put in order. */
export const springSortings = [
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
export type SpringSorting = (typeof springSortings)[number]

/** Springs made ready to be searched: each with its words folded, and the orders made so far. */
export interface SpringShelf<S extends StockSpring> {
  readonly springs: readonly S[]
  readonly texts: readonly string[]
  readonly orders: Map<SpringSorting, readonly number[]>
}

/** What is looked for among springs; an empty text stands for all of them. */
export interface SpringQuestion {
  /** Words of number, tray, note or price, and sizes as a spring line writes them: `1.50 × 0.105 × 360`. */
  readonly text: string
  /** The only tray to look on; null for all, an empty text for the springs on no list. */
  readonly tray: string | null
  /** The column to go by; null for the order of the library or, where sizes are asked for, the nearest first. */
  readonly by: SpringSorting | null
  readonly down: boolean
}

type Size = 'heightMm' | 'thicknessMm' | 'lengthMm' | 'barrelMm'
/** The sizes asked for, in the order in which a line gives them; those that are not are left out. */
export type SoughtSizes = Readonly<Partial<Record<Size, number>>>

/** The order of the figures in what is typed, with the caliber field that reads each. */
const typedOrder = [
  ['heightMm', 'springHeightMm'],
  ['thicknessMm', 'springThicknessMm'],
  ['lengthMm', 'springLengthMm'],
  ['barrelMm', 'barrelInsideMm'],
] as const

/**
 * How far a near size may lie from the one typed, which also weighs it against the others. Our choice: two of the steps in
 * which heights and thicknesses are stocked (0.05 and 0.005 mm, common practice), half a millimetre of barrel.
 */
const near: Readonly<Record<Size, (sought: number) => number>> = {
  heightMm: () => 0.1,
  thicknessMm: () => 0.01,
  lengthMm: (sought) => sought / 10,
  barrelMm: () => 0.5,
}

const figure = String.raw`[\d.,]+(?:\/\d+)?(?:\s?(?:mm|in|"))?`
const line = new RegExp(String.raw`(?:^|\s)(${figure}(?:\s*[x×*]\s*${figure})+)(?:\s*[x×*])?(?=\s|$)`, 'i')

/**
 * What is typed to find springs, apart: the sizes of a spring line, if there is one, and the folded words.
 * @example
 * readSpringSearch('drawer 1,5x0,105x360') // { words: ['drawer'], sizes: { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 } }
 * @example
 * readSpringSearch('15/10 × .105') // { words: [], sizes: { heightMm: 1.5, thicknessMm: 0.105 } }
 */
export const readSpringSearch = (text: string): { readonly words: readonly string[]; readonly sizes: SoughtSizes } => {
  const [found, figures = ''] = line.exec(text) ?? []
  const sizes: Partial<Record<Size, number>> = {}
  const typed = figures === '' ? [] : figures.split(/\s*[x×*]\s*/i)
  for (const [at, [size, field]] of typedOrder.entries()) {
    const printed = typed[at]
    if (printed === undefined) break
    const read = readField(field, printed)
    if (!read.ok || typeof read.value !== 'number') return { words: wordsOf(text), sizes: {} }
    sizes[size] = read.value
  }
  if (typed.length > typedOrder.length) return { words: wordsOf(text), sizes: {} }
  return { words: wordsOf(found === undefined ? text : text.replace(found, ' ')), sizes }
}

const wordsOf = (text: string): readonly string[] => foldName(text).split(' ').filter(Boolean)

/** Makes springs ready to be searched. */
export const shelveSprings = <S extends StockSpring>(springs: readonly S[]): SpringShelf<S> => ({
  springs,
  texts: springs.map(({ supplierRef, tray = '', note = '', price = '' }) =>
    foldName(`${supplierRef} ${tray} ${note} ${price}`),
  ),
  orders: new Map(),
})

/** The first amount of a price as printed; its currency is left aside. */
const amount = (price: string): number => {
  const [digits = ''] = /\d[\d.,]*/.exec(price) ?? []
  const plain = digits.replace(/[.,](?=\d{3}(?:\D|$))/g, '').replace(',', '.')
  return plain === '' ? Number.NaN : Number.parseFloat(plain)
}

/** The places of the springs in the order of a column; what has nothing there stands last. */
const orderOf = <S extends StockSpring>({ springs, orders }: SpringShelf<S>, by: SpringSorting): readonly number[] => {
  const made = orders.get(by)
  if (made !== undefined) return made
  const keys = springs.map((spring) => {
    const value = spring[by]
    if (by === 'price') return amount(spring.price ?? '')
    return typeof value === 'string' ? naturalKey(value) : (value ?? Number.NaN)
  })
  const isAbsent = (key: string | number | undefined) => key === undefined || Number.isNaN(key)
  const order = springs.map((_, at) => at)
  order.sort((one, other) => {
    const [a, b] = [keys[one], keys[other]]
    if (isAbsent(a) || isAbsent(b)) return Number(isAbsent(a)) - Number(isAbsent(b)) || one - other
    return (a as number) < (b as number) ? -1 : (a as number) > (b as number) ? 1 : one - other
  })
  orders.set(by, order)
  return order
}

/** How far a spring lies from the sizes asked for, or nothing where one is out of reach. A size it does not give counts as just within. */
const distance = (spring: StockSpring, sought: readonly (readonly [Size, number, number])[]): number | undefined => {
  let far = 0
  for (const [size, wanted, reach] of sought) {
    const value = spring[size]
    const off = value === undefined ? 1 : Math.abs(value - wanted) / reach
    // A hair more than the reach, for sizes that decimals do not hold exactly.
    if (off > 1 + 1e-9) return undefined
    far += off
  }
  return far
}

/** The springs that answer to a question, in the order asked for. */
export const findSprings = <S extends StockSpring>(shelf: SpringShelf<S>, question: SpringQuestion): readonly S[] => {
  const { text, tray, by, down } = question
  const { words, sizes } = readSpringSearch(text)
  const sought = typedOrder.flatMap(([size]) => {
    const wanted = sizes[size]
    return wanted === undefined ? [] : [[size, wanted, near[size](wanted)] as const]
  })
  const found: S[] = []
  const absent: S[] = []
  const distances = new Map<S, number>()
  const take = (at: number): void => {
    const spring = shelf.springs[at]
    if (spring === undefined || (tray !== null && (spring.tray ?? '') !== tray)) return
    const said = shelf.texts[at] ?? ''
    for (const word of words) if (!said.includes(word)) return
    const far = distance(spring, sought)
    if (far === undefined) return
    if (by === null && sought.length > 0) distances.set(spring, far)
    if (by !== null && spring[by] === undefined) absent.push(spring)
    else found.push(spring)
  }
  const order = by === null ? null : orderOf(shelf, by)
  const { length } = shelf.springs
  for (let place = 0; place < length; place += 1) {
    const at = down ? length - 1 - place : place
    take(order === null ? at : (order[at] ?? at))
  }
  if (distances.size > 0) found.sort((one, other) => (distances.get(one) ?? 0) - (distances.get(other) ?? 0))
  return absent.length === 0 ? found : [...found, ...absent]
}

/** The trays and lists that springs stand on, in their order, with how many on each; an empty name is that of no list. */
export const traysOf = (
  springs: readonly StockSpring[],
): readonly { readonly tray: string; readonly springs: number }[] => {
  const counts = new Map<string, number>()
  for (const { tray = '' } of springs) counts.set(tray, (counts.get(tray) ?? 0) + 1)
  return [...counts]
    .map(([tray, springs]) => ({ tray, springs, key: naturalKey(tray) }))
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ key: _, ...one }) => one)
}
