import type { KeyboardEvent } from 'react'

/** Arrow down and up go to the next and the last line, where one of them has the focus. */
export const walkLines = (event: KeyboardEvent, lines: readonly HTMLElement[]): void => {
  const at = lines.findIndex((line) => line === document.activeElement)
  if (at < 0) return
  if (event.key === 'ArrowDown') lines[at + 1]?.focus()
  else if (event.key === 'ArrowUp') lines[at - 1]?.focus()
  else return
  event.preventDefault()
}
