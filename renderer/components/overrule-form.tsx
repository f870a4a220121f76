import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import type { OverruleSeverity } from '../../core/proofs/severity.ts'

const choices: Readonly<Record<OverruleSeverity, string>> = {
  accepted: 'Accept',
  doubtful: 'Count as doubtful',
  wrong: 'Count as wrong',
}

interface OverruleFormProps {
  readonly title: string
  /** What may be made of the finding; the first stands chosen. */
  readonly severities: readonly OverruleSeverity[]
  /** The reason given before, where the finding has changed since. */
  readonly reason: string
  /** Answers why it was not kept, or null. */
  readonly save: (severity: OverruleSeverity, reason: string) => Promise<string | null>
  readonly leave: () => void
}

/** What the owner makes of a finding and why, in its place: Enter saves, Escape leaves. Never a form of its own, since it stands in one. */
export const OverruleForm = ({ title, severities, reason: before, save, leave }: OverruleFormProps) => {
  const id = useId()
  const group = useRef<HTMLFieldSetElement>(null)
  const [severity, setSeverity] = useState<OverruleSeverity | undefined>(severities[0])
  const [reason, setReason] = useState(before)
  const [problem, setProblem] = useState('')
  const busy = useRef(false)
  useEffect(() => group.current?.querySelector('input')?.focus(), [])

  const submit = async () => {
    if (severity === undefined || busy.current) return
    if (reason.trim() === '') {
      setProblem('Say why: an overrule is kept with its reason.')
      group.current?.querySelector('textarea')?.focus()
      return
    }
    busy.current = true
    setProblem((await save(severity, reason.trim())) ?? '')
    busy.current = false
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const { key, target } = event
    if (event.nativeEvent.isComposing || event.altKey) return
    const held = event.ctrlKey || event.metaKey
    if (key === 'Escape') leave()
    else if (held && (key === 's' || key === 'Enter')) void submit()
    else if (!held && !event.shiftKey && key === 'Enter' && !(target instanceof HTMLButtonElement)) void submit()
    else return
    event.preventDefault()
    event.stopPropagation()
  }
  return (
    <fieldset ref={group} className="overrule-form" data-own-keys onKeyDown={onKeyDown}>
      <legend className="out-of-sight">Overrule “{title}”</legend>
      <p className="overrule-choices">
        {severities.map((each) => (
          <label key={each}>
            <input
              type="radio"
              name={`${id}-severity`}
              checked={severity === each}
              onChange={() => setSeverity(each)}
            />
            {choices[each]}
          </label>
        ))}
      </p>
      <label className="overrule-reason">
        <span>Reason</span>
        <textarea
          rows={2}
          value={reason}
          aria-invalid={problem !== ''}
          aria-describedby={problem === '' ? undefined : `${id}-problem`}
          onChange={(event) => setReason(event.target.value)}
        />
      </label>
      {problem && (
        <p className="problem" role="alert" id={`${id}-problem`}>
          {problem}
        </p>
      )}
      <p className="actions">
        <button type="button" className="plain-button chief" onClick={() => void submit()}>
          Save
        </button>
        <button type="button" className="plain-button" onClick={leave}>
          Cancel <kbd>Esc</kbd>
        </button>
        <span className="quiet">
          <kbd>Enter</kbd> saves
        </span>
      </p>
    </fieldset>
  )
}
