import type { PlayMovement } from '../../../core/bench/play-standard.ts'
import { BenchField } from '../../components/bench-field.tsx'
import type { TypedFigure } from '../../components/typed-figure.ts'
import type { PlayTyped } from './play-place.ts'

const movements: Readonly<Record<PlayMovement, string>> = {
  watch: 'watch with a lever',
  cylinder: 'watch with a cylinder',
  'other-watch': 'watch with another escapement',
  clock: 'clock',
}

interface PlayAskedProps {
  readonly typed: PlayTyped
  readonly movement: PlayMovement
  readonly off: TypedFigure
  readonly onChange: (next: PlayTyped) => void
}

/** What holds for every play of the page: the kind of movement, what a reading may be off, and whose figures count. */
export const PlayAsked = ({ typed, movement, off, onChange }: PlayAskedProps) => (
  <div className="bench-fields play-asked">
    <div className="bench-field">
      <label htmlFor="play-movement">Movement</label>
      <select
        id="play-movement"
        value={movement}
        onChange={({ target }) => onChange({ ...typed, movement: target.value as PlayMovement })}
      >
        {Object.entries(movements).map(([key, word]) => (
          <option key={key} value={key}>
            {word}
          </option>
        ))}
      </select>
    </div>
    <BenchField
      label="Readings may be off by"
      name="offMm"
      unit="mm"
      figure={off}
      hint="each way; else half of the last digit, or type 0.04 ±0.005"
      onType={(offMm) => onChange({ ...typed, offMm })}
    />
    <label className="play-makers">
      <input
        type="checkbox"
        checked={typed.makers}
        onChange={({ target }) => onChange({ ...typed, makers: target.checked })}
      />{' '}
      Type the maker’s figures
    </label>
  </div>
)
