import Papa from 'papaparse'
import { expect, test } from 'vitest'
import type { ProofLine } from '../../../../core/api/contract.ts'
import { sheetCsv } from '../../../../renderer/pages/proofs/sheet-csv.ts'

const line: ProofLine = {
  caliberId: 1,
  maker: '=HYPERLINK("http://x")',
  designation: '@1, "B"',
  proof: 'jewels-add-up',
  outcome: 'disagrees',
  severity: 'wrong',
  stated: 17,
  found: 15,
  unit: 'jewels',
  difference: -2,
  allowed: 0,
  message: '+2 − 2',
  overruled: null,
  working: [],
  field: null,
}

test('a text that a spreadsheet would run is kept from it, and a figure stays a figure', () => {
  const text = sheetCsv([line])
  expect(text.startsWith('\ufeffmaker,designation,')).toBe(true)
  const [, row] = Papa.parse<string[]>(text.slice(1), { skipEmptyLines: true }).data
  expect(row?.slice(0, 2)).toEqual([`'=HYPERLINK("http://x")`, `'@1, "B"`])
  expect(row?.slice(5, 11)).toEqual(['17', '15', 'jewels', '-2', '0', "'+2 − 2"])
})
