import { useEffect } from 'react'
import { idOfCell } from './entry/cells.ts'
import { EntryPage } from './entry/entry-page.tsx'

/** The form of a caliber, opened at one field where the address names one. */
export const EditAtField = ({ id, field }: { id: number; field: string | undefined }) => {
  useEffect(() => {
    if (field === undefined) return
    const goToField = () => {
      const control = document.getElementById(idOfCell(field)) ?? document.getElementById(`section-${field}`)
      if (!control) return
      // The form stands only after the draft was read.
      waiting.disconnect()
      control.scrollIntoView({ block: 'center' })
      control.focus()
    }
    const waiting = new MutationObserver(goToField)
    waiting.observe(document.body, { childList: true, subtree: true })
    goToField()
    return () => waiting.disconnect()
  }, [field])
  return <EntryPage key={id} caliberId={id} />
}
