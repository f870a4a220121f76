import { type ReactNode, useId, useState } from 'react'
import { useRest } from './use-rest.ts'
import './bench-field.css'

interface BenchFieldProps {
  readonly label: string
  readonly name: string
  readonly unit: string
  readonly hint?: ReactNode
  readonly figure: { readonly text: string; readonly echo: string; readonly problem: string }
  readonly onType: (text: string) => void
}

/** A figure to be typed at the bench: as typed, with what it was read as under it, or what cannot be read. */
export const BenchField = ({ label, name, unit, hint, figure, onType }: BenchFieldProps) => {
  const id = useId()
  const [focused, setFocused] = useState(false)
  const rested = useRest(figure.text, focused)
  const problem = rested ? figure.problem : ''
  return (
    <div className="bench-field">
      <label htmlFor={id}>{label}</label>
      <span className="bench-figure">
        <input
          id={id}
          name={name}
          type="text"
          autoComplete="off"
          spellCheck={false}
          value={figure.text}
          aria-invalid={problem !== '' || undefined}
          aria-describedby={`${id}-note`}
          onChange={(event) => onType(event.target.value)}
          onFocus={(event) => {
            setFocused(true)
            event.target.select()
          }}
          onBlur={() => setFocused(false)}
        />
        {unit && <span className="unit">{unit}</span>}
      </span>
      <p className={problem ? 'problem' : 'quiet'} id={`${id}-note`}>
        {problem || (figure.echo && `= ${figure.echo}`) || hint}
      </p>
    </div>
  )
}
