import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import type { Source } from '../../../core/exchange/library-file.ts'
import { sourceUnits } from '../../../core/record/source-units.ts'
import { languageNames } from '../../components/language-names.ts'
import { sourceKey } from '../entry/source-key.ts'
import { changedSource, type TypedSource, typedSource } from './typed-source.ts'

interface SourceFormProps {
  /** The source to be changed; null for a new one. */
  readonly source: Source | null
  /** The keys on the shelf already. */
  readonly taken: readonly string[]
  readonly save: (source: Source) => Promise<string | null>
  readonly leave: () => void
}

const rows: readonly (readonly [keyof TypedSource, string, string?])[] = [
  ['title', 'Title'],
  ['author', 'Author'],
  ['year', 'Year'],
  ['edition', 'Edition'],
  ['language', 'Language', 'languages'],
  ['unitsAsPrinted', 'Units as printed', 'units'],
]

/** A source to be filled in or changed in its place: Enter goes on and in the last field saves, Escape leaves. */
export const SourceForm = ({ source, taken, save, leave }: SourceFormProps) => {
  const id = useId()
  const form = useRef<HTMLFormElement>(null)
  const [typed, setTyped] = useState(() => typedSource(source))
  const [ownKey, setOwnKey] = useState<string | null>(null)
  const [problem, setProblem] = useState('')
  const key = source?.key ?? ownKey ?? (typed.title.trim() === '' ? '' : sourceKey(typed, taken))

  useEffect(() => form.current?.querySelector('input')?.focus(), [])

  const submit = async () => {
    const made = changedSource(source, key.trim(), typed, taken)
    if ('problem' in made) {
      setProblem(made.problem)
      form.current?.querySelector<HTMLElement>(`[name="${made.field}"]`)?.focus()
      return
    }
    setProblem('')
    const refused = await save(made.source)
    if (refused !== null) setProblem(refused)
  }

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return
    if (event.key === 'Escape') leave()
    else if (event.ctrlKey && (event.key === 's' || event.key === 'Enter')) void submit()
    else if (event.key === 'Enter' && event.target instanceof HTMLInputElement) {
      const fields = [...(form.current?.querySelectorAll<HTMLElement>('input, textarea') ?? [])]
      const next = fields[fields.indexOf(event.target) + (event.shiftKey ? -1 : 1)]
      if (next) next.focus()
      else void submit()
    } else return
    event.preventDefault()
    event.stopPropagation()
  }

  return (
    <form
      ref={form}
      className="source-form"
      aria-label={source === null ? 'New source' : `Change ${source.title}`}
      onKeyDown={onKeyDown}
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      {rows.map(([name, label, list]) => (
        <label key={name} data-part={name}>
          <span>{label}</span>
          <input
            type="text"
            name={name}
            autoComplete="off"
            list={list === undefined ? undefined : `${id}-${list}`}
            value={typed[name]}
            onChange={(event) => setTyped({ ...typed, [name]: event.target.value })}
          />
        </label>
      ))}
      <label data-part="notes">
        <span>Notes</span>
        <textarea
          name="notes"
          rows={2}
          value={typed.notes}
          onChange={(event) => setTyped({ ...typed, notes: event.target.value })}
        />
      </label>
      <label data-part="key">
        <span>Key{source === null ? ', as it stands beside each value' : ', which stays'}</span>
        <input
          type="text"
          name="key"
          autoComplete="off"
          spellCheck={false}
          readOnly={source !== null}
          value={key}
          onChange={(event) => setOwnKey(event.target.value)}
        />
      </label>
      <datalist id={`${id}-languages`}>
        {Object.entries(languageNames).map(([code, name]) => (
          <option key={code} value={code}>
            {name}
          </option>
        ))}
      </datalist>
      <datalist id={`${id}-units`}>
        {Object.entries(sourceUnits).map(([units, { label }]) => (
          <option key={units} value={units}>
            {label}
          </option>
        ))}
      </datalist>
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      <p className="actions">
        <button type="submit" className="plain-button chief">
          Save
        </button>
        <button type="button" className="plain-button" onClick={leave}>
          Leave <kbd>Esc</kbd>
        </button>
        <span className="quiet">
          <kbd>Enter</kbd> goes on, <kbd>Ctrl S</kbd> saves
        </span>
      </p>
    </form>
  )
}
