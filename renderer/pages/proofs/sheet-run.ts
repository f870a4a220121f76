import { useSyncExternalStore } from 'react'
import { call, changesMade } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'
import { nothingProved, type Proved, proveLibrary } from './prove-library.ts'

/** The proving of the whole library; it goes on, and stays, while one looks at another page. */
export interface SheetRun extends Proved {
  readonly state: 'not-begun' | 'running' | 'stopped' | 'done' | 'failed'
  /** Whether the lines of what cannot be checked are among the lines. */
  readonly unchecked: boolean
  readonly failure: string
  /** How many changes the page had made when it began; where more were made since, it no longer holds. */
  readonly changes: number
  readonly endedAt: Date | null
}

let run: SheetRun = {
  ...nothingProved,
  state: 'not-begun',
  unchecked: false,
  failure: '',
  changes: 0,
  endedAt: null,
}
let current = 0
const listeners = new Set<() => void>()
const set = (change: Partial<SheetRun>) => {
  run = { ...run, ...change }
  for (const listener of listeners) listener()
}

/** Begins anew. What was found before stays in sight until the first of the new is there. */
export const startSheet = async ({ unchecked }: { readonly unchecked: boolean }): Promise<void> => {
  current += 1
  const mine = current
  set({ state: 'running', unchecked, failure: '', changes: changesMade(), endedAt: null, proved: 0 })
  try {
    const proved = await proveLibrary({
      ask: (input) => call('proofs.sheet', input),
      unchecked,
      stopped: () => mine !== current,
      show: set,
      now: () => performance.now(),
    })
    if (mine === current) set({ ...proved, state: 'done', endedAt: new Date() })
  } catch (error) {
    if (mine === current) set({ state: 'failed', failure: failureText(error) })
  }
}

/** Leaves it at what was proved so far. */
export const stopSheet = (): void => {
  current += 1
  set({ state: 'stopped', endedAt: new Date() })
}

export const useSheetRun = (): SheetRun =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => run,
  )
