import type { Dispatch } from 'react'
import type { EntryReading, Source } from '../../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { FieldDef, Language } from '../../../core/fields/field.ts'
import { listFields } from '../../../core/fields/list-fields.ts'
import { formatQuantity } from '../../../core/quantities/format-quantity.ts'
import { languageNames } from '../../components/language-names.ts'
import { chosenIndex } from './chosen-reading.ts'
import { isMeasured, unitOf } from './echo-of.ts'
import { type EntryAction, isName, type SourceInHand } from './entry-state.ts'
import { ReadingsList } from './readings-list.tsx'

const rangeOf = (def: FieldDef): string => {
  if (!isMeasured(def)) return ''
  const unit = def.kind === 'rate' ? ` ${unitOf.rate}` : ''
  const say = (value: number) => `${formatQuantity(def.kind, value)}${unit}`
  const [low, high] = def.usual
  return low === high ? `Usually ${say(low)}.` : `Usually ${say(low)} to ${say(high)}.`
}

interface FieldHelpProps {
  readonly cell: string
  readonly readings: readonly EntryReading[]
  readonly sources: readonly Source[]
  readonly inHand: SourceInHand
  readonly namesShown: boolean
  /** What F1 does: names first, then the glossary. */
  readonly names: () => void
  readonly dispatch: Dispatch<EntryAction>
}

/** What is known of the field one is in: its meaning, its names, where its value comes from, what others say. */
export const FieldHelp = ({ cell, readings, sources, inHand, namesShown, names, dispatch }: FieldHelpProps) => {
  const [head = ''] = cell.split('.')
  const fieldKey = Object.hasOwn(caliberFields, head) ? (head as CaliberFieldKey) : undefined
  const term = fieldKey
    ? caliberFields[fieldKey]
    : Object.hasOwn(listFields, head)
      ? listFields[head as keyof typeof listFields]
      : undefined
  if (term === undefined) {
    return (
      <section className="entry-help" aria-label="About the field">
        <p id="entry-help-meaning">
          State source and page once; they ride along on every value typed from then on. A value that has a source keeps
          it.
        </p>
      </section>
    )
  }
  const at = chosenIndex(readings)
  const reading = readings[at]
  const source = sources.find(({ key }) => key === reading?.source)
  const takes = fieldKey !== undefined && !isName(fieldKey) && reading !== undefined && reading.printed !== ''
  return (
    <section className="entry-help" aria-label="About the field">
      <h2>{term.label}</h2>
      <p id="entry-help-meaning">
        {term.meaning} {fieldKey ? rangeOf(caliberFields[fieldKey]) : ''}
      </p>
      {namesShown && (
        <dl className="entry-names">
          {Object.entries(languageNames).map(([language, name]) => (
            <div key={language}>
              <dt>{name}</dt>
              <dd lang={language}>{term.names[language as Language].join(', ') || '–'}</dd>
            </div>
          ))}
        </dl>
      )}
      <p className="entry-keys">
        <kbd>F1</kbd>{' '}
        <button type="button" className="entry-link" onClick={names}>
          {namesShown ? 'look it up in the glossary' : 'names in four languages'}
        </button>
      </p>
      {takes ? (
        <p className="entry-help-source">
          {reading.source === undefined
            ? 'No source.'
            : `From ${[source?.author, source?.title ?? reading.source, source?.year].filter(Boolean).join(', ')}${reading.page ? `, p. ${reading.page}` : ''}.`}
          {inHand.source !== '' && (inHand.source !== reading.source || inHand.page !== (reading.page ?? '')) ? (
            <>
              <button
                type="button"
                className="entry-link"
                aria-keyshortcuts="Alt+T"
                onClick={() => dispatch({ type: 'give-source', keys: [fieldKey] })}
              >
                Give it the source above
              </button>
              <kbd>Alt T</kbd>
              <button
                type="button"
                className="entry-link"
                aria-keyshortcuts="Alt+R"
                onClick={() => dispatch({ type: 'add-reading', key: fieldKey })}
              >
                Add what that source says
              </button>
              <kbd>Alt R</kbd>
            </>
          ) : null}
        </p>
      ) : null}
      {fieldKey !== undefined && !isName(fieldKey) ? (
        <ReadingsList fieldKey={fieldKey} readings={readings} sources={sources} dispatch={dispatch} />
      ) : null}
    </section>
  )
}
