import { X } from 'lucide-react'
import type { ClipboardEvent } from 'react'
import { type GaugeCellProblem, type GaugeCells, readGaugeRows } from '../../../core/exchange/read-gauge-rows.ts'
import type { LengthUnit } from '../../../core/quantities/length-units.ts'
import type { GaugeMeasure } from '../../../core/springs/gauge-table.ts'
import { gaugeProblem } from '../../../core/wording/gauge-table-problem.ts'
import { withCell, withoutRow, withPasted } from './typed-gauge.ts'

interface GaugeRowsProps {
  readonly cells: readonly GaugeCells[]
  readonly measures: GaugeMeasure
  readonly unit: LengthUnit
  readonly problems: readonly GaugeCellProblem[]
  /** The row one is in: what is not finished there is not told yet. */
  readonly inHand: number | null
  readonly take: (row: number) => void
  readonly change: (cells: readonly GaugeCells[]) => void
}

/** The rows of a gauge table to be typed, or pasted from any cell on; each size is read out in millimetres. */
export const GaugeRows = ({ cells, measures, unit, problems, inHand, take, change }: GaugeRowsProps) => {
  const echo = ({ number, size }: GaugeCells): string => {
    const [row] = readGaugeRows([{ number: number || '0', size }], { measures, unit }).rows
    return row === undefined || size.trim() === String(row.mm) ? '' : `= ${Number(row.mm.toFixed(5))} mm`
  }
  const paste = (row: number) => (event: ClipboardEvent) => {
    const text = event.clipboardData.getData('text/plain')
    if (!/[\t\n;]/.test(text.trim())) return
    event.preventDefault()
    change(withPasted(cells, row, text))
  }
  return (
    <ol className="gauge-cells">
      {cells.map((row, at) => {
        const found = problems.filter((problem) => problem.row === at)
        const told = at === inHand ? [] : found
        const input = (cell: keyof GaugeCells, label: string) => (
          <input
            type="text"
            data-row={at}
            data-cell={cell}
            autoComplete="off"
            spellCheck={false}
            aria-label={`${label} in row ${at + 1}`}
            aria-invalid={told.some((problem) => problem.cell === cell) || undefined}
            aria-describedby={told.length > 0 ? `gauge-row-${at}` : undefined}
            value={row[cell]}
            onChange={({ target }) => change(withCell(cells, at, cell, target.value))}
            onPaste={paste(at)}
            onFocus={() => take(at)}
          />
        )
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is known by its place alone
          <li key={at}>
            {input('number', 'Number')}
            {input('size', 'Size')}
            <span className="gauge-echo quiet">{echo(row)}</span>
            {at < cells.length - 1 && (
              <button
                type="button"
                className="text-button"
                aria-label={`Take out row ${at + 1}`}
                onClick={() => change(withoutRow(cells, at))}
              >
                <X aria-hidden="true" />
              </button>
            )}
            {told.length > 0 && (
              <p className="problem" id={`gauge-row-${at}`}>
                Row {at + 1}: {told.map(({ problem }) => gaugeProblem(problem)).join(' ')}
              </p>
            )}
          </li>
        )
      })}
    </ol>
  )
}
