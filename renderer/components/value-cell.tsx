import type { Source } from '../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../core/fields/caliber-fields.ts'
import type { Outcome } from '../../core/proofs/proof.ts'
import type { Reading } from '../../core/record/reading.ts'
import { MissingValue } from './missing-value.tsx'
import { OutcomeMark } from './outcome-mark.tsx'
import { SourceMark } from './source-mark.tsx'
import { fieldPlace } from './use-sought-field.ts'
import { wordValue } from './word-value.ts'

interface ValueCellProps {
  readonly id: number
  readonly field: CaliberFieldKey
  readonly readings: readonly Reading[]
  /** Designation of the base that states the value, where this caliber does not. */
  readonly inheritedFrom: string | undefined
  /** What could not be read, in a sentence. */
  readonly problem: string | null
  /** The worst that a proof says of it. */
  readonly outcome: Outcome | null
  readonly sources: readonly Source[]
}

/** True where the print says the same figure in the same unit, `3,90` for 3.9. */
const saysTheSame = (printed: string, value: unknown) =>
  typeof value === 'number' && Number(printed.replace(/mm$/, '').replace(',', '.')) === value

const plain = (text: string) => text.replace(/[\s\u202f]/g, '')

/** One field: label, value, unit, where it comes from, and whether others disagree. */
export const ValueCell = ({ id, field, readings, inheritedFrom, problem, outcome, sources }: ValueCellProps) => {
  const chosen = readings.find((reading) => reading.chosen) ?? readings[0]
  const others = readings.filter((reading) => reading !== chosen)
  const shown = chosen && wordValue(field, chosen.value)
  const asPrinted =
    chosen &&
    shown &&
    caliberFields[field].kind !== 'choice' &&
    !saysTheSame(chosen.printed, chosen.value) &&
    plain(chosen.printed) !== plain(shown.text) &&
    plain(chosen.printed) !== plain(shown.text + shown.unit)
  const marked = outcome === 'disagrees' || outcome === 'doubtful'
  return (
    <div
      id={fieldPlace(field)}
      tabIndex={-1}
      className={inheritedFrom === undefined ? 'value-cell' : 'value-cell inherited'}
    >
      <dt title={caliberFields[field].meaning}>{caliberFields[field].label}</dt>
      <dd>
        <span className={shown && typeof chosen?.value === 'number' ? 'value number' : 'value'}>
          {shown ? shown.text : <MissingValue id={id} field={field} />}
          {shown?.unit && <span className="unit"> {shown.unit}</span>}
        </span>
        <span className="origin">
          {marked && (
            <span className={`badge outcome-${outcome}`}>
              <OutcomeMark outcome={outcome} />
              {outcome === 'doubtful' ? 'doubtful' : 'disagrees'}
            </span>
          )}
          {asPrinted && <span className="printed">printed {chosen.printed}</span>}
          {inheritedFrom !== undefined && <span className="inherited-from">from {inheritedFrom}</span>}
          {chosen?.source !== undefined && <SourceMark reading={chosen} sources={sources} />}
          {chosen?.note && <span className="reading-note">{chosen.note}</span>}
          {others.map((other) => (
            <span key={`${other.source} ${other.printed}`} className="other-reading">
              also {other.printed}
              {other.source !== undefined && <SourceMark reading={other} sources={sources} />}
              {other.note && <span className="reading-note">{other.note}</span>}
            </span>
          ))}
          {problem && <span className="problem">{problem}</span>}
        </span>
      </dd>
    </div>
  )
}
