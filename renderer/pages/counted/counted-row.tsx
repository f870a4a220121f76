import { useState } from 'react'
import { labelOf } from '../../../core/record/label-of.ts'
import type { CountKey } from '../../../core/trains/cuttable-counts.ts'
import type { TypedFigure } from '../../components/typed-figure.ts'
import { useRest } from '../../components/use-rest.ts'

interface CountedRowProps {
  readonly field: CountKey
  readonly specified: number | undefined
  readonly figure: TypedFigure
  readonly onType: (text: string) => void
}

/** One part: the specified count beside the one made. */
export const CountedRow = ({ field, specified, figure, onType }: CountedRowProps) => {
  const [focused, setFocused] = useState(false)
  const rested = useRest(figure.text, focused)
  const problem = rested ? figure.problem : ''
  const differs = specified !== undefined && figure.value !== undefined && figure.value !== specified
  const verdict =
    figure.problem !== '' ? '' : figure.value === undefined ? '' : differs ? '✕ differs' : '✓ as specified'
  return (
    <tr data-differs={differs || undefined}>
      <th scope="row" id={`count-${field}`}>
        {labelOf(field)}
      </th>
      <td className="figure">{specified ?? <span className="quiet">–</span>}</td>
      <td>
        <input
          type="text"
          name={field}
          inputMode="numeric"
          autoComplete="off"
          spellCheck={false}
          aria-labelledby={`count-${field} counted-column`}
          aria-invalid={problem !== '' || undefined}
          aria-describedby={`count-${field}-note`}
          value={figure.text}
          onChange={(event) => onType(event.target.value)}
          onFocus={(event) => {
            setFocused(true)
            event.target.select()
          }}
          onBlur={() => setFocused(false)}
        />
      </td>
      <td id={`count-${field}-note`} className={problem ? 'problem' : differs ? 'differs' : 'quiet'}>
        {problem || (specified === undefined && figure.value !== undefined ? 'not specified' : verdict)}
      </td>
    </tr>
  )
}
