import { type WordKind, wordFields } from '../../../core/exchange/list-words.ts'
import { stockSpringLabel } from '../../../core/exchange/read-stock-spring.ts'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { readChoice } from '../../../core/record/read-choice.ts'
import { useTypedChoice } from '../../components/use-typed-choice.ts'

interface SpringChoiceProps {
  readonly name: WordKind
  readonly value: string
  readonly set: (value: string) => void
}

/** The end or the material of a spring, chosen or typed in the words of a list. */
export const SpringChoice = ({ name, value, set }: SpringChoiceProps) => {
  const def = caliberFields[wordFields[name]]
  const typeChoice = useTypedChoice(def, value, set)
  const read = readChoice(def, value)
  return (
    <label className="spring-text">
      <span>{stockSpringLabel(name)}</span>
      <select
        name={name}
        value={read.ok ? read.value : ''}
        onChange={({ target }) => set(target.value)}
        onKeyDown={typeChoice}
      >
        <option value="">not said</option>
        {Object.entries(def.choices).map(([choice, label]) => (
          <option key={choice} value={choice}>
            {label}
          </option>
        ))}
      </select>
    </label>
  )
}
