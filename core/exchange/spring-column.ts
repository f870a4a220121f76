import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { LengthUnit } from '../quantities/length-units.ts'
import { foldHeading } from '../record/fold-heading.ts'
import { type SpringColumnKind, springHeadings } from './spring-headings.ts'
import { columnFromHeading } from './table-column.ts'

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

const kinds: ReadonlyMap<string, SpringColumnKind> = new Map(
  (Object.keys(springHeadings) as SpringColumnKind[]).flatMap((kind) =>
    (springHeadings[kind] ?? []).map((word) => [foldHeading(word), kind] as const),
  ),
)

const lengthUnits: readonly string[] = ['mm', 'tenths-mm', 'hundredths-mm', 'micrometre', 'ligne', 'douzieme', 'inch']

/** What a heading of prices says besides: the currency, with or without tax. */
const currency = /[\s,(]+(?:[€$£]|chf|sfr|fr|eur|euro|gbp|usd|h\.?t|t\.?t\.?c)\.?\s*\)?$/iu

const withUnit =
  /^(.+?)\s*[([,:;]?\s*(?:in\s+|en\s+)?(mm|1\s?\/\s?10{1,3}(?:\s?mm)?|inch(?:es)?|in|"|zoll|lignes?|'''|dixièmes|zehntel|tenths|tienden|centièmes|hundertstel|hundredths|honderdsten)\s*[)\]]?\.?$/iu
const unitWords: readonly (readonly [RegExp, LengthUnit])[] = [
  [/^mm$/i, 'mm'],
  [/^(1\s?\/\s?10(\s?mm)?|dixièmes|zehntel|tenths|tienden)$/i, 'tenths-mm'],
  [/^(1\s?\/\s?100(\s?mm)?|centièmes|hundertstel|hundredths|honderdsten)$/i, 'hundredths-mm'],
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
  const own = kinds.get(foldHeading(heading)) ?? kinds.get(foldHeading(heading.replace(currency, '')))
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
