/** The sizes of a spring that a line can give; those that are not known are left out. */
export interface SpringSizes {
  readonly heightMm?: number | undefined
  readonly thicknessMm?: number | undefined
  readonly lengthMm?: number | undefined
  readonly barrelMm?: number | undefined
}

/** The orders in which the trade writes the figures of a spring (common practice). */
export const springOrders = {
  'height-thickness-length-barrel': {
    label: 'Height × thickness × length × barrel, mm',
    parts: ['height', 'thickness', 'length', 'barrel'],
  },
  'height-thickness-length': { label: 'Height × thickness × length, mm', parts: ['height', 'thickness', 'length'] },
  'tenths-hundredths-length': {
    label: 'Height in tenths × thickness in hundredths × length',
    parts: ['height-tenths', 'thickness-hundredths', 'length'],
  },
  'height-hundredths-barrel': {
    label: 'Height, thickness in hundredths, barrel',
    parts: ['height', 'thickness-hundredths', 'barrel'],
  },
  inches: { label: 'Height × thickness × length, inches', parts: ['height-inch', 'thickness-inch', 'length-inch'] },
} as const satisfies Record<string, { label: string; parts: readonly Part[] }>

export type SpringOrder = keyof typeof springOrders

type Part =
  | 'height'
  | 'thickness'
  | 'length'
  | 'barrel'
  | 'height-tenths'
  | 'thickness-hundredths'
  | 'height-inch'
  | 'thickness-inch'
  | 'length-inch'

const mmPerInch = 25.4
/** At least `least` decimals, and as many more, up to `most`, as the figure has. */
const decimals = (value: number, least: number, most: number): string => {
  const text = value.toFixed(most).replace(/0+$/, '')
  const [whole = '', rest = ''] = text.split('.')
  return rest.length >= least ? text.replace(/\.$/, '') : `${whole}${least === 0 ? '' : `.${rest.padEnd(least, '0')}`}`
}

const part =
  (key: keyof SpringSizes, unit: number, least: number, most: number) =>
  (sizes: SpringSizes): string | undefined => {
    const value = sizes[key]
    return value === undefined ? undefined : decimals(value / unit, least, most)
  }

const written: Readonly<Record<Part, (sizes: SpringSizes) => string | undefined>> = {
  height: part('heightMm', 1, 2, 3),
  thickness: part('thicknessMm', 1, 2, 4),
  length: part('lengthMm', 1, 0, 1),
  barrel: part('barrelMm', 1, 1, 2),
  'height-tenths': part('heightMm', 0.1, 0, 2),
  'thickness-hundredths': part('thicknessMm', 0.01, 0, 2),
  'height-inch': part('heightMm', mmPerInch, 3, 4),
  'thickness-inch': part('thicknessMm', mmPerInch, 4, 4),
  'length-inch': part('lengthMm', mmPerInch, 0, 2),
}

/**
 * The figures of a spring as a line to order by, in one of the orders that the trade writes.
 * A figure that is not known stands as a dash, so that no other can be taken for it.
 * @example
 * springLine({ heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360, barrelMm: 10.5 }, 'height-thickness-length-barrel') // '1.50 × 0.105 × 360 × 10.5'
 * @example
 * springLine({ heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }, 'tenths-hundredths-length', ',') // '15 × 10,5 × 360'
 */
export const springLine = (sizes: SpringSizes, order: SpringOrder, decimalMark: '.' | ',' = '.'): string => {
  const parts: readonly Part[] = springOrders[order].parts
  return parts.map((part) => (written[part](sizes) ?? '–').replace('.', decimalMark)).join(' × ')
}
