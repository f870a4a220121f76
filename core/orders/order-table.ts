import { naturalKey } from '../record/natural-key.ts'
import type { OrderLine } from './order-line.ts'

const columns = [
  'quantity',
  'kind',
  'what',
  'number',
  'supplier',
  'caliber',
  'source',
  'page',
  'note',
  'state',
  'date',
] as const

const caliberName = ({ caliber }: OrderLine): string =>
  caliber === undefined ? '' : `${caliber.maker} ${caliber.designation}`.trim()

/**
 * The order list as rows of a table, headings first. Quantities stay numbers; what there is not is left empty.
 * @example
 * rowsFromOrders([]).length // 1
 */
export const rowsFromOrders = (lines: readonly OrderLine[]): (string | number)[][] => [
  [...columns],
  ...lines.map((line) => [
    line.quantity,
    line.kind,
    line.what,
    line.supplierRef ?? line.number ?? '',
    line.tray ?? '',
    caliberName(line),
    line.source ?? '',
    line.page ?? '',
    line.note ?? '',
    line.state,
    line.at.slice(0, 10),
  ]),
]

/**
 * The open lines as text for a letter to a supplier: quantity, number, what, and for which caliber.
 * @example
 * orderText([{ kind: 'part', what: 'click', number: '415', quantity: 2, state: 'open', at: '2031-05-01' }]) // '2 × no. 415: click'
 */
export const orderText = (lines: readonly OrderLine[]): string =>
  lines
    .filter(({ state }) => state === 'open')
    .map((line) => {
      const number = line.supplierRef ?? line.number
      const name = caliberName(line)
      return `${line.quantity} × ${number === undefined ? '' : `no. ${number}: `}${line.what}${name === '' ? '' : ` (for ${name})`}`
    })
    .join('\n')

/** Lines of one supplier, in the order in which they were put on the list. */
export interface OrderGroup<L extends OrderLine> {
  /** Empty where no supplier was chosen. */
  readonly supplier: string
  readonly lines: readonly L[]
}

/** The lines by supplier, those without one last. */
export const groupOrders = <L extends OrderLine>(lines: readonly L[]): readonly OrderGroup<L>[] =>
  [...Map.groupBy(lines, ({ tray = '' }) => tray)]
    .map(([supplier, of]) => ({ supplier, lines: of, key: naturalKey(supplier) }))
    .sort((a, b) => Number(a.supplier === '') - Number(b.supplier === '') || (a.key < b.key ? -1 : 1))
    .map(({ key: _, ...group }) => group)
