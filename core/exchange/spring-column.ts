import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { LengthUnit } from '../quantities/length-units.ts'
import { foldHeading } from '../record/fold-heading.ts'
import { columnFromHeading } from './table-column.ts'

/** What stands in a column of a list of springs; `sizes` is a cell with several figures, in an order that is chosen. */
export const springColumnKinds = {
  supplierRef: 'Supplier’s number',
  heightMm: 'Height',
  thicknessMm: 'Thickness',
  lengthMm: 'Length',
  barrelMm: 'Barrel',
  sizes: 'Sizes in one cell',
  end: 'End',
  material: 'Material',
  inStock: 'In stock',
  price: 'Price',
  note: 'Note',
} as const
export type SpringColumnKind = keyof typeof springColumnKinds

/** A column of a list of springs. */
export interface SpringColumn {
  /** The heading as printed; empty where there was none. */
  readonly heading: string
  /** Null where the column is left out. */
  readonly kind: SpringColumnKind | null
  /** The unit of the bare numbers under it; of `sizes`, nothing. */
  readonly unit: LengthUnit | null
}

const sizeOfField: Readonly<Partial<Record<CaliberFieldKey, SpringColumnKind>>> = {
  springHeightMm: 'heightMm',
  heightMm: 'heightMm',
  // Older English lists call the height of the strip its width.
  widthMm: 'heightMm',
  springThicknessMm: 'thicknessMm',
  springLengthMm: 'lengthMm',
  lengthMm: 'lengthMm',
  barrelInsideMm: 'barrelMm',
  diameterMm: 'barrelMm',
  springEnd: 'end',
  springMaterial: 'material',
  notes: 'note',
}

/** Headings of suppliers’ lists in four languages (common practice). */
const words: Readonly<Partial<Record<SpringColumnKind, readonly string[]>>> = {
  supplierRef: [
    ...[
      'ref',
      'ref.',
      'ref no',
      'reference',
      'no',
      'no.',
      'number',
      'article',
      'article no',
      'item',
      'item no',
      'sku',
      'code',
    ],
    ...['réf', 'référence', 'numéro', 'n°', 'article n°'],
    ...['Nr', 'Nr.', 'Artikel', 'Art.-Nr.', 'Artikelnummer', 'Bestell-Nr.', 'Bestellnummer', 'Nummer'],
    ...['bestelnummer', 'bestelnr', 'artikelnr', 'nummer'],
  ],
  heightMm: ['h', 'height', 'width', 'hauteur', 'Höhe', 'Breite', 'hoogte', 'breedte'],
  thicknessMm: ['e', 'thickness', 'strength', 'force', 'épaisseur', 'Stärke', 'Dicke', 'dikte', 'sterkte'],
  lengthMm: ['l', 'length', 'longueur', 'Länge', 'lengte'],
  barrelMm: [
    'd',
    'barrel',
    'barrel dia',
    'barrel diameter',
    'barillet',
    'Federhaus',
    'Federhaus Ø',
    'veerton',
    'for barrel',
  ],
  sizes: [
    ...['size', 'sizes', 'dimensions', 'dim', 'dimension', 'mainspring', 'spring'],
    ...['dimensions du ressort', 'ressort', 'Maße', 'Abmessungen', 'Zugfeder', 'maten', 'afmetingen', 'veer'],
  ],
  end: [
    'end',
    'hook',
    'hooking',
    'attachment',
    'type',
    'accrochage',
    'Ende',
    'Federende',
    'Endstück',
    'Haken',
    'einde',
    'haak',
  ],
  material: ['material', 'alloy', 'matière', 'alliage', 'Material', 'Werkstoff', 'materiaal'],
  inStock: [
    'stock',
    'in stock',
    'qty',
    'quantity',
    'pieces',
    'quantité',
    'qté',
    'Menge',
    'Bestand',
    'Stück',
    'aantal',
    'voorraad',
  ],
  price: ['price', 'unit price', 'prix', 'Preis', 'Stückpreis', 'prijs'],
  note: ['note', 'notes', 'remark', 'remarks', 'remarque', 'Bemerkung', 'opmerking'],
}

const kinds: ReadonlyMap<string, SpringColumnKind> = new Map(
  (Object.keys(words) as SpringColumnKind[]).flatMap((kind) =>
    (words[kind] ?? []).map((word) => [foldHeading(word), kind] as const),
  ),
)

const lengthUnits: readonly string[] = ['mm', 'tenths-mm', 'hundredths-mm', 'micrometre', 'ligne', 'douzieme', 'inch']

const withUnit =
  /^(.+?)\s*[([,:;]?\s*(?:in\s+|en\s+)?(mm|1\s?\/\s?10{1,3}(?:\s?mm)?|inch(?:es)?|in|"|zoll|lignes?|''')\s*[)\]]?\.?$/iu
const unitWords: readonly (readonly [RegExp, LengthUnit])[] = [
  [/^mm$/i, 'mm'],
  [/^1\s?\/\s?10(\s?mm)?$/i, 'tenths-mm'],
  [/^1\s?\/\s?100(\s?mm)?$/i, 'hundredths-mm'],
  [/^1\s?\/\s?1000(\s?mm)?$/i, 'micrometre'],
  [/^(inch(es)?|in|"|zoll)$/i, 'inch'],
  [/^(lignes?|''')$/i, 'ligne'],
]

/**
 * What a heading of a list of springs says of its column, in any of the four languages.
 * @example
 * springColumnFromHeading('Force (1/100)') // { heading: 'Force (1/100)', kind: 'thicknessMm', unit: 'hundredths-mm' }
 * @example
 * springColumnFromHeading('Bestell-Nr.') // { heading: 'Bestell-Nr.', kind: 'supplierRef', unit: null }
 */
export const springColumnFromHeading = (text: string): SpringColumn => {
  const heading = text.replace(/^\ufeff/, '').trim()
  const own = kinds.get(foldHeading(heading))
  if (own !== undefined) return { heading, kind: own, unit: null }
  const [, name = '', word = ''] = withUnit.exec(heading) ?? []
  const named = kinds.get(foldHeading(name))
  if (named !== undefined) {
    return { heading, kind: named, unit: unitWords.find(([pattern]) => pattern.test(word.trim()))?.[1] ?? null }
  }
  const { field, unit } = columnFromHeading(heading)
  const kind = field === null ? undefined : sizeOfField[field]
  const length = unit !== null && lengthUnits.includes(unit) ? (unit as LengthUnit) : null
  return { heading, kind: kind ?? null, unit: kind === undefined ? null : length }
}
