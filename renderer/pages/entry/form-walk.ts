import { idOfCell } from './cells.ts'

/** The cells that are in sight: those of fields put away are passed over. */
const cellsOf = (form: HTMLElement): HTMLElement[] =>
  [...form.querySelectorAll<HTMLElement>('[data-cell]')].filter((cell) => !cell.closest('details:not([open])'))

const enter = (control: HTMLElement) => {
  control.focus()
  if (control instanceof HTMLInputElement) control.select()
  control.scrollIntoView({ block: 'nearest' })
}

/** Goes to a cell by name, opening what it is put away in; true where it is there. */
export const goToCell = (cell: string): boolean => {
  const control = document.getElementById(idOfCell(cell))
  if (control === null) return false
  const away = control.closest('details')
  if (away) away.open = true
  enter(control)
  return true
}

/** True for a line of a list that nothing has been typed in yet. */
const isBlankLine = (line: Element): boolean =>
  [...line.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[data-cell]')].every(({ value }) => value === '')

/** Goes on to the next cell (1) or back (-1); from a list's blank line, on past the list; from the last cell, to what saves. */
export const walk = (form: HTMLElement, from: HTMLElement, step: 1 | -1): void => {
  const cells = cellsOf(form)
  const blank = step === 1 ? from.closest('[data-line]') : null
  const leaving = blank !== null && isBlankLine(blank) ? blank : null
  const start = cells.indexOf(from)
  const next =
    step === 1 ? cells.slice(start + 1).find((cell) => !leaving?.contains(cell)) : cells[Math.max(0, start - 1)]
  if (next) enter(next)
  else form.querySelector<HTMLElement>('[data-after-last]')?.focus()
}
