import type { Source } from '../../../core/exchange/library-file.ts'
import type { GaugeTable } from '../../../core/springs/gauge-table.ts'
import { gaugeMeasureWords } from '../../../core/wording/gauge-sentence.ts'

interface GaugeSheetProps {
  readonly table: GaugeTable
  readonly id: number
  readonly sources: readonly Source[]
  readonly edit: () => void
  readonly remove: () => void
}

/** Two decimals at least, so that the figures of a column stand under each other. */
const sizeText = (mm: number): string => {
  const text = String(Number(mm.toFixed(5)))
  return text.length < mm.toFixed(2).length ? mm.toFixed(2) : text
}

const placeWords = { first: 'the first of several numbers', second: 'the second of several numbers' } as const

/** One gauge table as it stands: what it measures, where it comes from, and its numbers with their sizes. */
export const GaugeSheet = ({ table, id, sources, edit, remove }: GaugeSheetProps) => {
  const { name, measures, place, source, page, rows } = table
  const title = sources.find(({ key }) => key === source)?.title ?? source
  const from = title === undefined ? 'own entry' : page === undefined ? title : `${title}, p. ${page}`
  return (
    <li className="gauge" data-id={id}>
      <h2>
        <button type="button" className="gauge-title" data-id={id} onClick={edit}>
          {name}
        </button>
      </h2>
      <p className="gauge-about">
        <span>{gaugeMeasureWords[measures]} in mm</span>
        <span className="quiet">{from}</span>
        {place !== undefined && <span className="quiet">{placeWords[place]}</span>}
        <span className="quiet">{rows.length === 1 ? '1 number' : `${rows.length} numbers`}</span>
      </p>
      <dl className="gauge-sizes" aria-label={`${name}, ${gaugeMeasureWords[measures]} in millimetres by number`}>
        {rows.map(({ number, mm, printed }) => (
          <div key={number} title={printed === undefined ? undefined : `printed ${printed}`}>
            <dt>{number}</dt>
            <dd>{sizeText(mm)}</dd>
          </div>
        ))}
      </dl>
      <p className="actions head-actions">
        <button
          type="button"
          className="text-button"
          aria-label={`Edit ${name}, ${gaugeMeasureWords[measures]}`}
          onClick={edit}
        >
          Edit
        </button>
        <button
          type="button"
          className="text-button"
          aria-label={`Remove ${name}, ${gaugeMeasureWords[measures]}`}
          onClick={remove}
        >
          Remove
        </button>
      </p>
    </li>
  )
}
