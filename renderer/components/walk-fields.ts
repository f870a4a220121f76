import type { KeyboardEvent } from 'react'

/** Enter and the arrows go from one field of the bench to the next, and back with Shift or the arrow up; Escape leaves. */
export const walkFields =
  (leave: () => void) =>
  (event: KeyboardEvent<HTMLElement>): void => {
    const { target, key } = event
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement) || event.nativeEvent.isComposing)
      return
    if (key === 'Escape') leave()
    else {
      const back = key === 'ArrowUp' || (key === 'Enter' && event.shiftKey)
      if (target instanceof HTMLSelectElement || (!back && key !== 'Enter' && key !== 'ArrowDown')) return
      const fields = [...event.currentTarget.querySelectorAll<HTMLElement>('input, select')]
      fields[fields.indexOf(target) + (back ? -1 : 1)]?.focus()
    }
    event.preventDefault()
  }
