import type { Dispatch } from 'react'
import type { EntryReading } from '../../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { cellOfNote } from './cells.ts'
import { chosenIndex } from './chosen-reading.ts'
import type { EntryAction } from './entry-state.ts'
import { formSections } from './form-sections.ts'
import { goToCell } from './form-walk.ts'
import { type EntryKeys, useEntryKeys } from './use-entry-keys.ts'

type FormKeys = Pick<EntryKeys, 'save' | 'saveAndNext' | 'leave' | 'names' | 'turnPage' | 'arrange'>

/** The keys of the form: those that act on the field one is in, beside those for all of it. */
export const useCellKeys = (
  field: CaliberFieldKey | undefined,
  readings: readonly EntryReading[],
  dispatch: Dispatch<EntryAction>,
  formKeys: FormKeys,
): void => {
  const chosenAt = chosenIndex(readings)
  useEntryKeys({
    ...formKeys,
    undo: () => dispatch({ type: 'undo' }),
    redo: () => dispatch({ type: 'redo' }),
    jump: (section) => goToCell(section === 0 ? 'bar.source' : (formSections[section - 1]?.first ?? '')),
    giveSource: () => field && dispatch({ type: 'give-source', keys: [field] }),
    addReading: () => field && dispatch({ type: 'add-reading', key: field }),
    readings:
      field && readings.length > 1
        ? {
            choose: (by) =>
              dispatch({
                type: 'choose-reading',
                key: field,
                index: (chosenAt + by + readings.length) % readings.length,
              }),
            note: () => goToCell(cellOfNote(field)),
            remove: () => {
              dispatch({ type: 'remove-reading', key: field, index: chosenAt })
              goToCell(field)
            },
          }
        : undefined,
  })
}
