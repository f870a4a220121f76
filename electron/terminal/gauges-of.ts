import { readGaugeTable } from '../../core/exchange/read-gauge-table.ts'
import { readLibraryFile } from '../../core/exchange/read-library-file.ts'
import type { GaugeTable } from '../../core/springs/gauge-table.ts'
import { gaugeProblem } from '../../core/wording/gauge-table-problem.ts'
import { UnusableInput } from './command.ts'

/**
 * The gauge tables of a library file, by which a printed gauge is looked up.
 * @throws UnusableInput where a table cannot be read
 */
export const gaugesOf = (place: string, text: string): readonly GaugeTable[] =>
  (readLibraryFile(text, place).gauges ?? []).map((line, i) => {
    const read = readGaugeTable(line)
    if (read.ok) return read.table
    const { place: within, problem } = read.problem
    throw new UnusableInput(`${place}, gauges[${i}].${within}: ${gaugeProblem(problem)}`)
  })
