import type { TypedFigure } from '../../components/typed-figure.ts'

interface PlayCellProps {
  /** What the column is called; shown with the cell where the columns stack, unless the row says it. */
  readonly column?: string
  /** What is measured, in full. */
  readonly label: string
  readonly name: string
  readonly figure: TypedFigure
  /** Whether it is called unreadable yet. */
  readonly wrong: boolean
  /** A figure that stands in the cell because it follows from others. */
  readonly reckoned?: string | undefined
  /** The element that says what the figure comes to. */
  readonly toldBy: string
  readonly onType: (text: string) => void
}

/** A cell for one figure of a play, with what it was read as under it where that says more. */
export const PlayCell = ({ column, label, name, figure, wrong, reckoned, toldBy, onType }: PlayCellProps) => (
  <div className="play-cell">
    {column !== undefined && (
      <span className="play-column" aria-hidden="true">
        {column}
      </span>
    )}
    <input
      type="text"
      name={name}
      inputMode="decimal"
      autoComplete="off"
      spellCheck={false}
      aria-label={label}
      aria-invalid={wrong || undefined}
      aria-describedby={`${name}-note ${toldBy}`}
      readOnly={reckoned !== undefined}
      value={reckoned ?? figure.text}
      onChange={(event) => onType(event.target.value)}
      onFocus={(event) => event.target.select()}
    />
    <span id={`${name}-note`} className="play-echo">
      {reckoned === undefined && figure.echo && `= ${figure.echo}`}
    </span>
  </div>
)
