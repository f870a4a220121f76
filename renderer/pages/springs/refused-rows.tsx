import Papa from 'papaparse'
import { useState } from 'react'
import type { RefusedSpringRow } from '../../../core/exchange/read-spring-table.ts'
import { springRowProblem } from '../../../core/wording/spring-row-problem.ts'
import { saveAs } from '../../api/save-as.ts'

const few = 20

/** The rows that are not taken over, each with what stands there and why. */
export const RefusedRows = ({ refused }: { refused: readonly RefusedSpringRow[] }) => {
  const [all, setAll] = useState(false)
  const saveCsv = () => {
    const rows = refused.map(({ row, printed, problem }) => [row, printed, springRowProblem(problem)])
    const text = Papa.unparse([['row', 'printed', 'why'], ...rows], { escapeFormulae: true })
    saveAs('refused springs.csv', 'text/csv;charset=utf-8', `\ufeff${text}\r\n`)
  }
  return (
    <section className="refused-rows" aria-label="Rows refused">
      <h2>{refused.length === 1 ? '1 row is refused' : `${refused.length} rows are refused`}</h2>
      <ul>
        {(all ? refused : refused.slice(0, few)).map(({ row, printed, problem }) => (
          <li key={row}>
            <b>Row {row}</b> <span className="quiet">{printed}</span>
            <br />
            {springRowProblem(problem)}
          </li>
        ))}
      </ul>
      <p className="actions">
        {!all && refused.length > few && (
          <button type="button" className="plain-button" onClick={() => setAll(true)}>
            Show all {refused.length}
          </button>
        )}
        <button type="button" className="plain-button" onClick={saveCsv}>
          Save them as CSV
        </button>
      </p>
    </section>
  )
}
