import type { Dispatch, KeyboardEvent } from 'react'
import { isListKey } from '../../../core/record/read-entry.ts'
import type { EntryAction } from './entry-state.ts'
import { walk } from './form-walk.ts'

/** Enter goes on and Shift Enter back; up and down do the same where a line of text is typed. */
export const walkByKey = (event: KeyboardEvent<HTMLElement>): void => {
  const { target, key } = event
  if (event.ctrlKey || event.metaKey || event.altKey || event.nativeEvent.isComposing) return
  if (!(target instanceof HTMLElement) || target.dataset.cell === undefined) return
  const arrow = target instanceof HTMLInputElement && (key === 'ArrowDown' || key === 'ArrowUp')
  if (key !== 'Enter' && !arrow) return
  event.preventDefault()
  walk(event.currentTarget, target, key === 'ArrowUp' || (key === 'Enter' && event.shiftKey) ? -1 : 1)
}

/** Ctrl Backspace takes out the line of a list that one is in. */
export const removeLineByKey = (event: KeyboardEvent<HTMLElement>, dispatch: Dispatch<EntryAction>): void => {
  const [list = '', line] = event.target instanceof HTMLElement ? (event.target.dataset.cell ?? '').split('.') : []
  if (!event.ctrlKey || event.key !== 'Backspace' || !isListKey(list)) return
  event.preventDefault()
  dispatch({ type: 'remove-line', list, line: Number(line) })
}
