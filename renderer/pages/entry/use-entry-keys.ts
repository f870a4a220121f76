import { useEffect, useRef } from 'react'

export interface EntryKeys {
  readonly save: () => void
  readonly saveAndNext: () => void
  readonly leave: () => void
  readonly undo: () => void
  readonly redo: () => void
  /** 0 is the source bar, 1 the first section. */
  readonly jump: (section: number) => void
  /** The names of the field one is in; pressed again, the glossary. */
  readonly names: () => void
  readonly giveSource: () => void
  readonly addReading: () => void
  /** To the next reading of the field one is in or the one before, why it is chosen, and away with it; absent where it has only one. */
  readonly readings:
    | { readonly choose: (by: 1 | -1) => void; readonly note: () => void; readonly remove: () => void }
    | undefined
  readonly turnPage: (by: 1 | -1) => void
  readonly arrange: () => void
}

const chosenKey = (event: KeyboardEvent, keys: EntryKeys): (() => void) | undefined => {
  const held = event.ctrlKey || event.metaKey
  const letter = event.key.toLowerCase()
  if (held && !event.altKey) {
    if (letter === 's' || event.key === 'Enter') return event.shiftKey ? keys.saveAndNext : keys.save
    if (letter === 'z') return event.shiftKey ? keys.redo : keys.undo
    if (letter === 'y') return keys.redo
    return undefined
  }
  if (event.altKey && !held) {
    const digit = /^Digit(\d)$/.exec(event.code)?.[1]
    if (digit !== undefined) return () => keys.jump(Number(digit))
    if (event.code === 'KeyT') return keys.giveSource
    if (event.code === 'KeyR') return keys.addReading
    if (event.code === 'KeyA') return keys.arrange
    if (keys.readings) {
      const { choose, note, remove } = keys.readings
      if (event.key === 'ArrowDown' || event.key === 'ArrowUp') return () => choose(event.key === 'ArrowDown' ? 1 : -1)
      if (event.code === 'KeyW') return note
      if (event.key === 'Delete') return remove
    }
    if (event.key === 'PageDown' || event.key === 'PageUp')
      return () => keys.turnPage(event.key === 'PageDown' ? 1 : -1)
    return undefined
  }
  if (event.key === 'F1') return keys.names
  if (event.key === 'Escape') return keys.leave
  return undefined
}

/** The keys of the entry page, before those of the frame. */
export const useEntryKeys = (keys: EntryKeys): void => {
  const latest = useRef(keys)
  useEffect(() => {
    latest.current = keys
  })
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.isComposing || document.querySelector('dialog[open], [role="dialog"]')) return
      if (event.target instanceof Element && event.target.closest('[data-own-keys]')) return
      const run = chosenKey(event, latest.current)
      if (!run) return
      event.preventDefault()
      event.stopPropagation()
      run()
    }
    addEventListener('keydown', press, { capture: true })
    return () => removeEventListener('keydown', press, { capture: true })
  }, [])
}
