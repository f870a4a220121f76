import { type Dispatch, type KeyboardEvent, memo } from 'react'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { chosenReading } from './chosen-reading.ts'
import type { FoundProblem } from './entry-problems.ts'
import { type EntryAction, isName } from './entry-state.ts'
import { FieldRow } from './field-row.tsx'
import { formSections } from './form-sections.ts'
import { walk } from './form-walk.ts'
import { LikeNamed } from './like-named.tsx'
import { ListEditor } from './list-editor.tsx'
import type { ProofMark } from './proof-marks.ts'

interface EntryFieldsProps {
  readonly caliberId: number | null
  readonly entry: CaliberEntry
  readonly marks: ReadonlyMap<string, ProofMark>
  readonly problems: readonly FoundProblem[]
  readonly insist: boolean
  readonly dispatch: Dispatch<EntryAction>
}

const none: readonly FoundProblem[] = []

/** Enter goes on and Shift Enter back; up and down do the same where a line of text is typed. */
export const walkByKey = (event: KeyboardEvent<HTMLElement>): void => {
  const { target, key } = event
  if (event.ctrlKey || event.metaKey || event.altKey || event.nativeEvent.isComposing) return
  if (!(target instanceof HTMLElement) || target.dataset['cell'] === undefined) return
  const arrow = target instanceof HTMLInputElement && (key === 'ArrowDown' || key === 'ArrowUp')
  if (key !== 'Enter' && !arrow) return
  event.preventDefault()
  walk(event.currentTarget, target, key === 'ArrowUp' || (key === 'Enter' && event.shiftKey) ? -1 : 1)
}

/** Every field of a caliber, section by section. */
export const EntryFields = memo(function EntryFields(props: EntryFieldsProps) {
  const { caliberId, entry, marks, problems, insist, dispatch } = props
  return (
    <div className="entry-fields">
      {formSections.map(({ name, label, keys, lists }, at) => (
        <section key={name} className="entry-section" aria-labelledby={`section-${name}`}>
          <h2 id={`section-${name}`}>
            {label} <kbd>Alt {at + 1}</kbd>
          </h2>
          {keys.map((key) => {
            const mark = marks.get(key)
            return (
              <FieldRow
                key={key}
                fieldKey={key}
                printed={isName(key) ? entry[key] : (chosenReading(entry.fields[key])?.printed ?? '')}
                readings={entry.fields[key]}
                markOutcome={mark?.outcome}
                markText={mark?.text}
                insist={insist}
                dispatch={dispatch}
              />
            )
          })}
          {name === 'identity' ? (
            <LikeNamed maker={entry.maker} designation={entry.designation} caliberId={caliberId} />
          ) : null}
          {lists.map((list) => {
            const mark = marks.get(list)
            const found = insist ? problems.filter((problem) => problem.list === list) : none
            return (
              <ListEditor
                key={list}
                list={list}
                lines={entry[list]}
                markOutcome={mark?.outcome}
                markText={mark?.text}
                problems={found.length > 0 ? found : none}
                dispatch={dispatch}
              />
            )
          })}
        </section>
      ))}
    </div>
  )
})
