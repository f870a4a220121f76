import { caliberFields } from '../fields/caliber-fields.ts'
import type { StockSpring } from '../springs/stock-spring.ts'

/** A spring in full, written for a table: sizes in millimetres, ends and materials in words. */
const cells: Readonly<Record<string, (spring: StockSpring) => string | number | undefined>> = {
  Tray: ({ tray }) => tray,
  Number: ({ supplierRef }) => supplierRef,
  'Height (mm)': ({ heightMm }) => heightMm,
  'Thickness (mm)': ({ thicknessMm }) => thicknessMm,
  'Length (mm)': ({ lengthMm }) => lengthMm,
  'Barrel (mm)': ({ barrelMm }) => barrelMm,
  End: ({ end }) => (end === undefined ? undefined : caliberFields.springEnd.choices[end]),
  Material: ({ material }) => (material === undefined ? undefined : caliberFields.springMaterial.choices[material]),
  'In stock': ({ inStock }) => inStock,
  Price: ({ price }) => price,
  Note: ({ note }) => note,
}

/**
 * Springs as rows of a table, headings first, which the import of lists reads again. Figures stay numbers; what is not
 * known is left empty.
 * @example
 * rowsFromSprings([{ supplierRef: 'A1', heightMm: 1.5, thicknessMm: 0.105 }])[1]?.slice(0, 4) // ['', 'A1', 1.5, 0.105]
 */
export const rowsFromSprings = (springs: readonly StockSpring[]): (string | number)[][] => [
  Object.keys(cells),
  ...springs.map((spring) => Object.values(cells).map((cell) => cell(spring) ?? '')),
]
