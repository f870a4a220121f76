import type { CaliberRow } from '../../../core/api/contract.ts'
import { formatLength } from '../../../core/quantities/format-length.ts'
import { formatQuantity } from '../../../core/quantities/format-quantity.ts'
import { ProofBadge } from '../../components/outcome-mark.tsx'
import { yearsText } from '../../components/years-text.ts'

interface CaliberOptionProps {
  readonly row: CaliberRow | undefined
  readonly index: number
  readonly count: number
  readonly active: boolean
  readonly top: number
  readonly height: number
  readonly why: string
  readonly onOpen: () => void
}

/** One line of the list; a dash while it is fetched. */
export const CaliberOption = ({ row, index, count, active, top, height, why, onOpen }: CaliberOptionProps) => (
  // biome-ignore lint/a11y/useKeyWithClickEvents: the list and the search field open the active line with Enter
  <div
    id={`caliber-${index}`}
    role="option"
    tabIndex={-1}
    aria-selected={active}
    aria-posinset={index + 1}
    aria-setsize={count}
    className="caliber-row"
    style={{ height, transform: `translateY(${top}px)` }}
    onClick={onOpen}
  >
    {row ? (
      <>
        <span className="designation">{row.designation}</span>
        <span className="maker">{row.maker}</span>
        <span className="figure">
          {row.diameterMm === null
            ? (row.sizePrinted?.replaceAll("'''", '‴') ?? '–')
            : formatLength(row.diameterMm, 'ligne')}
        </span>
        <span className="figure mm">{row.diameterMm === null ? '–' : row.diameterMm.toFixed(2)}</span>
        <span className="figure beat">{row.beatRateVph === null ? '–' : formatQuantity('rate', row.beatRateVph)}</span>
        <span className="years">{yearsText(row.firstYear, row.lastYear) ?? '–'}</span>
        <ProofBadge disagree={row.disagree} doubtful={row.doubtful} />
        {why && <span className="why">{why}</span>}
      </>
    ) : (
      <span className="quiet">–</span>
    )}
  </div>
)
