import type { LengthUnit } from '../quantities/length-units.ts'
import { type SpringColumn, springColumnFromHeading } from './spring-column.ts'
import type { SpringColumnKind } from './spring-headings.ts'

/** What a list of springs seems to be: where its rows begin and what stands in each column. */
export interface SpringTableGuess {
  /** Rows above the first spring: titles and headings. */
  readonly headingRows: number
  readonly columns: readonly SpringColumn[]
  /** Whether decimals are written with a comma throughout. */
  readonly decimalMark: '.' | ','
}

const lookedAt = 15
const sampled = 200

const sizeKinds: readonly SpringColumnKind[] = ['heightMm', 'thicknessMm', 'lengthMm', 'barrelMm']

const numberIn = (cell: string): number | null => {
  const text = cell.trim().replace(',', '.')
  return /^\d*\.?\d+$/.test(text) ? Number(text) : null
}

const median = (figures: readonly number[]): number =>
  figures.toSorted((a, b) => a - b)[Math.floor(figures.length / 2)] ?? Number.NaN

/** In what units height and thickness may be written, with what makes millimetres of them. */
const heightUnits: readonly (readonly [LengthUnit, number])[] = [
  ['mm', 1],
  ['tenths-mm', 0.1],
  ['inch', 25.4],
]
const thicknessUnits: readonly (readonly [LengthUnit, number])[] = [
  ['mm', 1],
  ['hundredths-mm', 0.01],
  ['inch', 25.4],
]
const lengthUnits: readonly (readonly [LengthUnit, number])[] = [
  ['mm', 1],
  ['inch', 25.4],
]

/** Proportions of watch springs: height 5 to 40 thicknesses, length 1500 to 6000, barrel 50 to 150 (derived; wide on purpose). */
const between = (value: number, low: number, high: number): boolean => value >= low && value <= high

interface PlacedSize {
  readonly at: number
  readonly kind: SpringColumnKind
  readonly unit: LengthUnit
}

type Figure = { readonly at: number; readonly figure: number }

const placed = (
  columns: readonly Figure[],
  kind: SpringColumnKind,
  units: readonly (readonly [LengthUnit, number])[],
): readonly (PlacedSize & { readonly mm: number })[] =>
  columns.flatMap(({ at, figure }) => units.map(([unit, of]) => ({ at, kind, unit, mm: figure * of })))

/**
 * Which of the columns without a heading hold the sizes: the thickness is the smallest, the length the largest, and their
 * proportions are those of a spring. Of several answers, the one in millimetres, and then the one
 * in which the height stands before the thickness.
 */
const sizesByFigures = (columns: readonly Figure[]): readonly PlacedSize[] => {
  const heights = placed(columns, 'heightMm', heightUnits).filter(({ mm }) => between(mm, 0.5, 12))
  const lengths = placed(columns, 'lengthMm', lengthUnits)
  const answers = placed(columns, 'thicknessMm', thicknessUnits)
    .filter(({ mm }) => between(mm, 0.03, 0.6))
    .flatMap((e) =>
      heights
        .filter((h) => h.at !== e.at && between(h.mm / e.mm, 5, 40))
        .flatMap((h) =>
          lengths
            .filter((l) => l.at !== e.at && l.at !== h.at && between(l.mm / e.mm, 1500, 6000))
            .map((l) => [h, e, l] as const),
        ),
    )
  const unlikely = ([height, thickness, length]: (typeof answers)[number]): number =>
    2 * [height, thickness, length].filter(({ unit }) => unit !== 'mm').length + (height.at < thickness.at ? 0 : 1)
  const [h, e, l] = answers.toSorted((a, b) => unlikely(a) - unlikely(b))[0] ?? []
  if (h === undefined || e === undefined || l === undefined) return []
  const barrel = columns.find(({ at, figure }) => ![h.at, e.at, l.at].includes(at) && between(figure / e.mm, 50, 150))
  return [h, e, l, ...(barrel === undefined ? [] : placed([barrel], 'barrelMm', [['mm', 1]]))]
}

/**
 * Guesses what a list of springs is, for its reader to look over: headings in four languages, or else figures by their
 * proportions. A column that says nothing is left out.
 * @example
 * guessSpringColumns([['A1', '1,50', '0,105', '360'], ['A2', '1,20', '0,09', '300']]).columns.map(({ kind }) => kind) // ['supplierRef', 'heightMm', 'thicknessMm', 'lengthMm']
 */
export const guessSpringColumns = (rows: readonly (readonly string[])[]): SpringTableGuess => {
  const width = rows.slice(0, sampled).reduce((most, row) => Math.max(most, row.length), 0)
  const headed = rows.slice(0, lookedAt).map((row) => row.map(springColumnFromHeading))
  const best = headed.reduce(
    (found, columns, at) => {
      const known = new Set(columns.flatMap(({ kind }) => kind ?? [])).size
      return known > found.known ? { known, at } : found
    },
    { known: 1, at: -1 },
  )
  const headingRows = best.at + 1
  const body = rows.slice(headingRows, headingRows + sampled)
  const blank: SpringColumn = { heading: '', kind: null, unit: null }
  const columns: SpringColumn[] = onceEach(Array.from({ length: width }, (_, at) => headed[best.at]?.[at] ?? blank))
  const has = (kind: SpringColumnKind) => columns.some((column) => column.kind === kind)

  if (!has('sizes') && !has('thicknessMm')) {
    const free = columns.flatMap((column, at) => {
      if (column.kind !== null) return []
      const figures = body.flatMap((row) => numberIn(row[at] ?? '') ?? [])
      return figures.length * 2 > body.length ? [{ at, figure: median(figures) }] : []
    })
    for (const { at, kind, unit } of sizesByFigures(free)) columns[at] = { ...(columns[at] ?? blank), kind, unit }
    const combined = columns.findIndex(
      ({ kind }, at) => kind === null && body.filter((row) => isCombined(row[at] ?? '')).length * 2 > body.length,
    )
    if (!has('thicknessMm') && combined >= 0) columns[combined] = { ...(columns[combined] ?? blank), kind: 'sizes' }
  }
  if (!has('supplierRef')) {
    const at = columns.findIndex(({ kind }, index) => kind === null && isDistinct(body.map((row) => row[index] ?? '')))
    if (at >= 0) columns[at] = { ...(columns[at] ?? blank), kind: 'supplierRef' }
  }
  const sizes = columns.flatMap(({ kind }, at) =>
    kind !== null && (sizeKinds.includes(kind) || kind === 'sizes') ? [at] : [],
  )
  const cells = body.flatMap((row) => sizes.map((at) => row[at] ?? ''))
  const commas = cells.filter((cell) => /\d,\d/.test(cell)).length
  const points = cells.filter((cell) => /\d\.\d/.test(cell)).length
  return { headingRows, columns, decimalMark: commas > points ? ',' : '.' }
}

/** Of two columns that seem to hold the same, the later is left out; notes may stand in several. */
const onceEach = (columns: readonly SpringColumn[]): SpringColumn[] =>
  columns.map((column, at) =>
    column.kind !== null && column.kind !== 'note' && columns.findIndex(({ kind }) => kind === column.kind) < at
      ? { ...column, kind: null, unit: null }
      : column,
  )

/** Three figures or more with a sign of multiplication or a stroke between them. */
const isCombined = (cell: string): boolean => (cell.match(/\d\s*[x×*/]\s*[\d.,]/gi) ?? []).length >= 2

const isDistinct = (cells: readonly string[]): boolean => {
  const said = cells.map((cell) => cell.trim()).filter((cell) => cell !== '')
  return said.length > 0 && said.length * 2 > cells.length && new Set(said).size === said.length
}
