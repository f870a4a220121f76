import { type Dispatch, memo, useMemo } from 'react'
import type { Source } from '../../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { ListKey } from '../../../core/fields/list-fields.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { originOf } from '../../../core/record/inherit.ts'
import { wordValue } from '../../components/word-value.ts'
import { bookOrder, isField, type Placed } from './arrangement.ts'
import { cellOfField } from './cells.ts'
import { chosenReading } from './chosen-reading.ts'
import type { FoundProblem } from './entry-problems.ts'
import { type EntryAction, type EntryState, isName, unitsUnder } from './entry-state.ts'
import { FieldRow } from './field-row.tsx'
import { formSections } from './form-sections.ts'
import { ListEditor } from './list-editor.tsx'
import { NearNamed } from './near-named.tsx'
import type { ProofMark } from './proof-marks.ts'

interface EntryFieldsProps {
  readonly caliberId: number | null
  readonly state: EntryState
  /** The source in hand, where it is on the shelf: its columns lead the form. */
  readonly source: Source | undefined
  /** The caliber over its bases. */
  readonly family: Caliber
  readonly marks: ReadonlyMap<string, ProofMark>
  readonly problems: readonly FoundProblem[]
  readonly insist: boolean
  readonly dispatch: Dispatch<EntryAction>
}

/** What a field has from a base, as it is printed there; a choice by its name. */
const inheritedText = (family: Caliber, key: CaliberFieldKey): string | undefined => {
  if (originOf(family, key) === undefined) return undefined
  const value = family.values[key]
  if (value === undefined) return undefined
  return caliberFields[key].kind === 'choice' ? wordValue(key, value).text : family.readings[key]?.[0]?.printed
}

const none: readonly FoundProblem[] = []

/** Every field of a caliber: first those that the source in hand prints, in its order, then the others by section. */
export const EntryFields = memo(function EntryFields(props: EntryFieldsProps) {
  const { caliberId, state, source, family, marks, problems, insist, dispatch } = props
  const { entry, inHand, units, typed } = state
  const book = useMemo(() => bookOrder(source?.columns), [source?.columns])

  const fieldRow = (key: CaliberFieldKey) => {
    const mark = marks.get(key)
    const reading = chosenReading(entry.fields[key])
    return (
      <FieldRow
        key={key}
        fieldKey={key}
        printed={isName(key) ? entry[key] : (reading?.printed ?? '')}
        typed={typed?.cell === cellOfField(key) ? typed.text : undefined}
        unitsAsPrinted={unitsUnder(reading, inHand, units)}
        readings={entry.fields[key]}
        inherited={inheritedText(family, key)}
        inheritedFrom={originOf(family, key)?.values.designation}
        markOutcome={mark?.outcome}
        markText={mark?.text}
        insist={insist}
        dispatch={dispatch}
      />
    )
  }
  const listEditor = (list: ListKey) => {
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
  }
  const near = <NearNamed entry={entry} caliberId={caliberId} />
  const others = formSections.map(({ name, label, keys, lists }, at) => {
    const fields = keys.filter((key) => !book.includes(key))
    const left = lists.filter((list) => !book.includes(list))
    return fields.length + left.length === 0 ? null : (
      <section key={name} className="entry-section" aria-labelledby={`section-${name}`}>
        <h2 id={`section-${name}`}>
          {label} <kbd>Alt {at + 1}</kbd>
        </h2>
        {fields.map(fieldRow)}
        {name === 'identity' && book.length === 0 ? near : null}
        {left.map(listEditor)}
      </section>
    )
  })
  if (book.length === 0) return <div className="entry-fields">{others}</div>
  const row = (key: Placed) => (isField(key) ? fieldRow(key) : listEditor(key))
  // What the library has by nearly that name is said where the names are typed.
  const afterNames = Math.max(book.indexOf('maker'), book.indexOf('designation')) + 1
  const stated = Object.entries(entry.fields).filter(
    ([key, readings]) => isField(key) && !book.includes(key) && chosenReading(readings)?.printed,
  ).length
  return (
    <div className="entry-fields">
      <section className="entry-section" aria-labelledby="section-book">
        <h2 id="section-book">As {source?.title || source?.key} prints it</h2>
        {book.slice(0, afterNames).map(row)}
        {near}
        {book.slice(afterNames).map(row)}
      </section>
      <details className="entry-away">
        <summary>Other fields{stated > 0 ? `, ${stated === 1 ? 'one' : stated} of them filled in` : ''}</summary>
        {others}
      </details>
    </div>
  )
})
