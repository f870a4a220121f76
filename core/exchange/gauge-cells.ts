import type { LengthUnit } from '../quantities/length-units.ts'
import { tidyPrint } from '../quantities/tidy-print.ts'
import { columnUnitOf, writeColumnUnit } from './column-unit.ts'
import type { GaugeCells } from './read-gauge-rows.ts'

/** `21,0.05` and `21,0,05`; but of `12,5` nobody can say whether it is two columns or one figure. */
const byComma = /^([^,]+?)\s*,\s*(\d*[.,]\d+\D*|\d+ ?\/ ?\d+\D*|\d+ ?[^\d\s.,/].*)$/u
const bySpaces = /^(\S.*?)(?:\s*[=:]\s*|\s+)([\d.,]+(?:\s*\/\s*\d+)?\s*[^\d\s]*)$/u

const splitLine = (line: string): GaugeCells => {
  const mark = line.includes('\t') ? '\t' : line.includes(';') ? ';' : null
  if (mark !== null) {
    const [number = '', ...rest] = line.split(mark).map((cell) => cell.trim())
    while (rest.at(-1) === '') rest.pop()
    // More columns than two cannot be told apart, and stay in sight as they came.
    return { number, size: rest.join(mark === '\t' ? '  ' : '; ') }
  }
  const text = line.trim()
  const [, number, size] =
    byComma.exec(text) ?? (text.includes(',') && !/\s/.test(text) ? [] : (bySpaces.exec(text) ?? []))
  return number === undefined || size === undefined ? { number: text, size: '' } : { number, size }
}

/** The unit that the heading of the sizes names, in brackets or after a comma or alone. */
const unitOfHeading = (heading: string): LengthUnit | null => {
  const words = tidyPrint(heading)
  for (const text of [
    words,
    ...(/[([,]\s*([^)\]]+)[)\]]?$/.exec(words)?.slice(1) ?? []),
    words.split(' ').at(-1) ?? '',
  ]) {
    const unit = columnUnitOf('length', text)
    if (unit !== undefined) return unit as LengthUnit
  }
  return null
}

/**
 * Takes a pasted table of two columns apart, a line a row: at tabs, semicolons, commas or spaces. A heading is left out,
 * and the unit it names is written to each bare size. A line that cannot be taken apart stays whole in its first cell.
 * @example
 * gaugeCells('No.;1/100 mm\n14;12\n2/0;27') // [{ number: '14', size: '12/100' }, { number: '2/0', size: '27/100' }]
 * @example
 * gaugeCells('21,0,05\n20 = 0.06') // [{ number: '21', size: '0,05' }, { number: '20', size: '0.06' }]
 */
export const gaugeCells = (text: string): readonly GaugeCells[] => {
  const lines = text
    .replace(/^\ufeff/, '')
    .split(/\r\n?|\n/)
    .filter((line) => line.trim() !== '')
    .map(splitLine)
  const [first, ...others] = lines
  if (first === undefined || first.size === '' || /[\d¼½¾]/.test(first.number)) return lines
  const unit = unitOfHeading(first.size)
  // Without a unit, what has a figure in it is a row whose number cannot be read.
  if (unit === null && /\d/.test(first.size)) return lines
  return others.map(({ number, size }) => ({ number, size: writeColumnUnit(size, unit) }))
}
