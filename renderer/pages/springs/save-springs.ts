import Papa from 'papaparse'
import { rowsFromSprings } from '../../../core/exchange/springs-table.ts'
import { saveAs } from '../../api/save-as.ts'
import type { StoredSpring } from './spring-columns.ts'

/** Hands over springs as a table for a spreadsheet: marked as UTF-8, and no text in it is taken for a formula. */
export const saveSprings = (springs: readonly StoredSpring[]): void => {
  const text = Papa.unparse(rowsFromSprings(springs), { escapeFormulae: true })
  saveAs('springs.csv', 'text/csv;charset=utf-8', `\ufeff${text}\r\n`)
}
