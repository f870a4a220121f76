import { type Dispatch, memo, useMemo, useState } from 'react'
import type { EntryReading } from '../../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { FieldDef } from '../../../core/fields/field.ts'
import { readField } from '../../../core/record/read-field.ts'
import { bareUnit } from '../../../core/record/with-source-unit.ts'
import { wordProblem } from '../../../core/wording/quantity-problem.ts'
import { wordRemark } from '../../../core/wording/unusual-remark.ts'
import { useRest } from '../../components/use-rest.ts'
import { cellOfField, idOfCell } from './cells.ts'
import { chosenReading } from './chosen-reading.ts'
import { echoOf, isMeasured, unitOf, unitWords } from './echo-of.ts'
import type { EntryAction } from './entry-state.ts'
import { FieldInput } from './field-input.tsx'

interface FieldRowProps {
  readonly fieldKey: CaliberFieldKey
  readonly printed: string
  /** What was typed, while one is in the field, where it is kept with the unit of its source. */
  readonly typed: string | undefined
  /** The units of the source that the value has or would take. */
  readonly unitsAsPrinted: string | undefined
  readonly readings: readonly EntryReading[] | undefined
  /** What the field has from a base while nothing is stated, and the designation of that. */
  readonly inherited: string | undefined
  readonly inheritedFrom: string | undefined
  readonly markOutcome: 'disagrees' | 'doubtful' | undefined
  readonly markText: string | undefined
  /** True once saving was refused: every problem shows. */
  readonly insist: boolean
  readonly dispatch: Dispatch<EntryAction>
}

const sourceText = (reading: EntryReading | undefined): string =>
  reading?.source === undefined || reading.printed === ''
    ? ''
    : reading.page === undefined
      ? reading.source
      : `${reading.source} p. ${reading.page}`

/** One field of the form: label, input, unit and source; under it the echo, the remark, the error, the proofs that doubt it. */
export const FieldRow = memo(function FieldRow(props: FieldRowProps) {
  const { fieldKey, printed, typed, unitsAsPrinted, readings, markOutcome, markText, insist, dispatch } = props
  const inherited = printed === '' ? props.inherited : undefined
  const def: FieldDef = caliberFields[fieldKey]
  const [focused, setFocused] = useState(false)
  const rested = useRest(printed, focused)
  const read = useMemo(() => (printed.trim() === '' ? undefined : readField(fieldKey, printed)), [fieldKey, printed])

  const id = idOfCell(cellOfField(fieldKey))
  const echo = read?.ok && read.quantity && isMeasured(def) ? echoOf(def.kind, printed, read.quantity) : ''
  // The unit of what stands there, or the one that a bare figure would be taken in.
  const unit = read?.ok && read.quantity ? read.quantity.unit : bareUnit(fieldKey, unitsAsPrinted)
  const remark = read?.ok && read.remark ? wordRemark(fieldKey, read.remark) : ''
  const problem = read && !read.ok && (rested || insist) ? wordProblem(def.label, read.problem) : ''
  const source = sourceText(chosenReading(readings))
  const others = (readings ?? []).filter(({ printed: text }) => text !== '').length - (printed === '' ? 0 : 1)
  const notes = [
    inherited && `${id}-inherited`,
    echo && `${id}-echo`,
    problem && `${id}-problem`,
    remark && `${id}-remark`,
    markText && `${id}-proof`,
    focused && 'entry-help-meaning',
  ].filter((note) => typeof note === 'string' && note !== '')

  return (
    <div
      className="entry-field"
      data-kind={def.kind}
      data-mark={problem ? 'problem' : (markOutcome ?? (remark ? 'remark' : undefined))}
    >
      <label className="entry-label" htmlFor={id}>
        {def.label}
      </label>
      <FieldInput
        cell={cellOfField(fieldKey)}
        def={def}
        printed={typed ?? printed}
        shown={read?.ok && def.kind === 'choice' ? String(read.value) : printed}
        ghost={inherited}
        invalid={problem !== ''}
        describedBy={notes.join(' ')}
        onFocus={() => setFocused(true)}
        onLeave={() => {
          setFocused(false)
          dispatch({ type: 'leave-cell' })
        }}
        onType={(text) => dispatch({ type: 'type-value', key: fieldKey, printed: text })}
      />
      {isMeasured(def) ? <span className="entry-unit">{unitWords[unit] ?? unitOf[def.kind]}</span> : null}
      {source || others > 0 || markText || inherited ? (
        <div className="entry-aside">
          {inherited ? (
            <span className="entry-source" id={`${id}-inherited`}>
              <span className="out-of-sight">{inherited} </span>from {props.inheritedFrom}
            </span>
          ) : null}
          {source || others > 0 ? (
            <span className="entry-source">
              {source}
              {others > 0 ? <span className="entry-others"> +{others} more</span> : null}
            </span>
          ) : null}
          {markText ? (
            <p className={`entry-proof-note is-${markOutcome}`} id={`${id}-proof`}>
              <span aria-hidden="true">{markOutcome === 'disagrees' ? '✕ ' : '△ '}</span>
              {markText}
            </p>
          ) : null}
        </div>
      ) : null}
      {echo ? (
        <p className="entry-echo" id={`${id}-echo`}>
          = {echo}
        </p>
      ) : null}
      {problem ? (
        <p className="entry-problem" id={`${id}-problem`}>
          {problem}
        </p>
      ) : null}
      {remark ? (
        <p className="entry-remark" id={`${id}-remark`}>
          <span aria-hidden="true">△ </span>
          {remark}
        </p>
      ) : null}
    </div>
  )
})
