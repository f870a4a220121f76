import type { ReactNode } from 'react'
import type { FieldDef } from '../../../core/fields/field.ts'
import { useTypedChoice } from '../../components/use-typed-choice.ts'
import { idOfCell } from './cells.ts'

interface FieldInputProps {
  readonly cell: string
  readonly def: FieldDef
  /** What the entry holds, and what the control shows of it: for a choice that is recognised, its key. */
  readonly printed: string
  readonly shown: string
  /** What stands for the value while none is typed. */
  readonly ghost?: string | undefined
  readonly invalid: boolean
  readonly describedBy: string
  readonly onFocus: () => void
  readonly onLeave: () => void
  readonly onType: (text: string) => void
}

/** The options of a choice; a word that is none of them stays to be seen until another is chosen. */
export const choiceOptions = (choices: Readonly<Record<string, string>>, shown: string, blank = '–'): ReactNode => (
  <>
    <option value="">{blank}</option>
    {shown !== '' && !Object.hasOwn(choices, shown) ? <option value={shown}>{`${shown} (not known)`}</option> : null}
    {Object.entries(choices).map(([key, label]) => (
      <option key={key} value={key}>
        {label}
      </option>
    ))}
  </>
)

const noChoices = { choices: {} }

/** The control of a field: a list of choices, some lines for notes, or a line of text as printed. */
export const FieldInput = ({
  cell,
  def,
  printed,
  shown,
  ghost,
  invalid,
  describedBy,
  onFocus,
  onLeave,
  onType,
}: FieldInputProps) => {
  const typeChoice = useTypedChoice(def.kind === 'choice' ? def : noChoices, printed, onType)
  const common = {
    id: idOfCell(cell),
    'data-cell': cell,
    'aria-invalid': invalid || undefined,
    'aria-describedby': describedBy || undefined,
    onFocus,
    onBlur: onLeave,
  }
  if (def.kind === 'choice') {
    return (
      <select
        {...common}
        className="entry-input"
        data-ghost={shown === '' && ghost !== undefined ? true : undefined}
        value={shown}
        onChange={(event) => onType(event.target.value)}
        onKeyDown={typeChoice}
      >
        {choiceOptions(def.choices, shown, ghost)}
      </select>
    )
  }
  const typing = { autoComplete: 'off', spellCheck: false, value: printed }
  if (cell === 'notes') {
    return (
      <textarea
        {...common}
        {...typing}
        className="entry-input"
        rows={3}
        onChange={(event) => onType(event.target.value)}
      />
    )
  }
  return (
    <input
      {...common}
      {...typing}
      className="entry-input"
      type="text"
      aria-required={cell === 'maker' || cell === 'designation' || undefined}
      placeholder={ghost ?? (def.kind === 'texts' ? 'with commas between them' : undefined)}
      onChange={(event) => onType(event.target.value)}
    />
  )
}
