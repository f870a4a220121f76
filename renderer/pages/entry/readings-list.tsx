import type { Dispatch } from 'react'
import type { EntryReading, Source } from '../../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { cellOfNote, idOfCell } from './cells.ts'
import { chosenIndex } from './chosen-reading.ts'
import type { EntryAction } from './entry-state.ts'
import { goToCell } from './form-walk.ts'

interface ReadingsListProps {
  readonly fieldKey: CaliberFieldKey
  readonly readings: readonly EntryReading[]
  readonly sources: readonly Source[]
  readonly dispatch: Dispatch<EntryAction>
}

const originText = ({ source, page }: EntryReading, sources: readonly Source[]): string =>
  source === undefined
    ? 'own entry'
    : [sources.find(({ key }) => key === source)?.title || source, page && `p. ${page}`].filter(Boolean).join(', ')

/** What each source says of the field, which of them is used, and why. */
export const ReadingsList = ({ fieldKey, readings, sources, dispatch }: ReadingsListProps) => {
  const at = chosenIndex(readings)
  const noteId = idOfCell(cellOfNote(fieldKey))
  const note = readings[at]?.note ?? ''
  const several = readings.length > 1
  if (!several && note === '') return null
  return (
    <div className="entry-readings">
      {several ? (
        <fieldset>
          <legend>
            Readings <kbd>Alt ↑ ↓</kbd>
          </legend>
          {readings.map((reading, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a reading is its place; two may say the same.
            <div key={index} className="entry-reading">
              <label>
                <input
                  type="radio"
                  name={`readings-${fieldKey}`}
                  checked={index === at}
                  onChange={() => dispatch({ type: 'choose-reading', key: fieldKey, index })}
                />
                <span className="entry-reading-text">
                  {reading.printed || '(nothing typed yet)'}{' '}
                  <span className="quiet">{originText(reading, sources)}</span>
                  {index !== at && reading.note ? <span className="quiet">: {reading.note}</span> : null}
                </span>
              </label>
              <button
                type="button"
                className="entry-link"
                aria-label={`Remove the reading ${reading.printed}`}
                onClick={() => {
                  dispatch({ type: 'remove-reading', key: fieldKey, index })
                  goToCell(fieldKey)
                }}
              >
                Remove
              </button>
              {index === at ? <kbd>Alt Del</kbd> : null}
            </div>
          ))}
        </fieldset>
      ) : null}
      <label htmlFor={noteId}>
        Why this one <kbd>Alt W</kbd>
      </label>
      <input
        id={noteId}
        className="entry-input"
        type="text"
        autoComplete="off"
        value={note}
        onChange={(event) => dispatch({ type: 'note-reading', key: fieldKey, index: at, note: event.target.value })}
        onBlur={() => dispatch({ type: 'leave-cell' })}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return
          event.preventDefault()
          goToCell(fieldKey)
        }}
      />
    </div>
  )
}
