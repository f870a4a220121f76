import Papa from 'papaparse'
import type { ProofLine } from '../../../core/api/contract.ts'
import { rowsFromProofLines } from '../../../core/exchange/proofs-table.ts'

/** The sheet as a table for a spreadsheet: marked as UTF-8, and no text in it is taken for a formula. */
export const sheetCsv = (lines: readonly ProofLine[]): string =>
  `\ufeff${Papa.unparse(rowsFromProofLines(lines), { escapeFormulae: true })}\r\n`
