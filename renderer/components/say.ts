import { useSyncExternalStore } from 'react'

let said = ''
let timer = 0
const listeners = new Set<() => void>()
const set = (text: string) => {
  said = text
  for (const listener of listeners) listener()
}

/** Says in the status line what was just done, and lets it go after a while. */
export const say = (text: string): void => {
  set(text)
  clearTimeout(timer)
  timer = window.setTimeout(() => set(''), 8000)
}

export const useSaid = (): string =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => said,
  )
