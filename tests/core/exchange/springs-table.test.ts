import fc from 'fast-check'
import { expect, test } from 'vitest'
import { guessSpringColumns } from '../../../core/exchange/guess-spring-columns.ts'
import { readSpringTable } from '../../../core/exchange/read-spring-table.ts'
import { rowsFromSprings } from '../../../core/exchange/springs-table.ts'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { StockSpring } from '../../../core/springs/stock-spring.ts'

const keysOf = <T extends object>(choices: T) => Object.keys(choices) as (keyof T)[]
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined })
const thousandths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => n / 1000)

const springs: fc.Arbitrary<StockSpring[]> = fc.uniqueArray(
  fc
    .record({
      supplierRef: fc.stringMatching(/^[A-Z]{1,2} [0-9]{1,4}[a-z]?$/),
      heightMm: thousandths(500, 9000),
      thicknessMm: thousandths(40, 400),
      lengthMm: maybe(fc.integer({ min: 100, max: 2000 })),
      barrelMm: maybe(thousandths(5000, 40_000)),
      end: maybe(fc.constantFrom(...keysOf(caliberFields.springEnd.choices))),
      material: maybe(fc.constantFrom(...keysOf(caliberFields.springMaterial.choices))),
      inStock: maybe(fc.nat(500)),
      price: maybe(fc.constantFrom('4.50 CHF', '12,50 €')),
      note: maybe(fc.constantFrom('blued', 'for the drawer; old')),
    })
    .map(
      (spring) => Object.fromEntries(Object.entries(spring).filter(([, value]) => value !== undefined)) as StockSpring,
    ),
  { selector: ({ supplierRef }) => supplierRef, minLength: 1, maxLength: 12 },
)

test('springs written as a table and read again are the same springs', () => {
  fc.assert(
    fc.property(springs, (all) => {
      const rows = rowsFromSprings(all).map((row) => row.map(String))
      const guess = guessSpringColumns(rows)
      expect(guess.headingRows).toBe(1)
      const read = readSpringTable(rows, { ...guess, order: 'height-thickness-length-barrel', words: {} })
      expect(read.refused).toEqual([])
      expect(read.springs.map(({ spring }) => spring)).toEqual(all)
    }),
  )
})
