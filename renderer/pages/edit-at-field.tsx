import { useEffect } from 'react'
import { type ListKey, listFields } from '../../core/fields/list-fields.ts'
import { cellOfList, idOfCell } from './entry/cells.ts'
import { EntryPage } from './entry/entry-page.tsx'
import { goToCell } from './entry/form-walk.ts'

const isList = (field: string): field is ListKey => Object.hasOwn(listFields, field)

/** The form of a caliber, opened at one field where the address names one. */
export const EditAtField = ({ id, field }: { id: number; field: string | undefined }) => {
  useEffect(() => {
    if (field === undefined) return
    const cell = isList(field) ? cellOfList(field, 0) : field
    let later = 0
    const goToField = () => {
      if (!document.getElementById(idOfCell(cell))) return
      // The form stands only after the draft was read, and then first goes to its own first field.
      waiting.disconnect()
      later = window.setTimeout(() => goToCell(cell), 80)
    }
    const waiting = new MutationObserver(goToField)
    waiting.observe(document.body, { childList: true, subtree: true })
    goToField()
    return () => {
      waiting.disconnect()
      clearTimeout(later)
    }
  }, [field])
  return <EntryPage key={id} caliberId={id} />
}
