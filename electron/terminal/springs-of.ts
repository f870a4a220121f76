import { existsSync } from 'node:fs'
import { readLibraryFile } from '../../core/exchange/read-library-file.ts'
import { readStockSpring } from '../../core/exchange/read-stock-spring.ts'
import type { StockSpring } from '../../core/springs/stock-spring.ts'
import { stockSpringProblem } from '../../core/wording/stock-spring-problem.ts'
import { UnusableInput } from './command.ts'
import { readText } from './read-text.ts'

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase()

/**
 * The springs that a command ranks: those of a library file, or those of one tray in it. A tray that names a file is read
 * from there.
 * @throws UnusableInput where a spring cannot be read, or no tray is named so
 */
export const springsOf = (place: string, text: string, tray: string | undefined): readonly StockSpring[] => {
  if (tray !== undefined && /\.json$/i.test(tray) && existsSync(tray)) {
    return springsOf(tray, readText(tray), undefined)
  }
  const springs = readLibraryFile(text, place).springs.map((line, i) => {
    const read = readStockSpring(line)
    if (!read.ok)
      throw new UnusableInput(`${place}, springs[${i}].${read.problem.key}: ${stockSpringProblem(read.problem)}`)
    return read.spring
  })
  if (tray === undefined) return springs
  const named = springs.filter(({ tray: of = '' }) => plain(of) === plain(tray))
  if (named.length === 0) {
    const trays = [...new Set(springs.map(({ tray: of }) => of ?? 'none named'))]
    throw new UnusableInput(
      `${place} has no tray ${tray.trim() || 'without a name'}; ` +
        (trays.length === 0 ? 'it has no springs.' : `it has ${trays.join(', ')}.`),
    )
  }
  return named
}
