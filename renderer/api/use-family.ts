import { useMemo } from 'react'
import type { Caliber } from '../../core/record/caliber.ts'
import { inheritFrom } from '../../core/record/inherit.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { useBases } from './use-bases.ts'

/** The caliber over the bases that the library holds of it; itself where it has none, or until they are read. */
export const useFamily = (caliberId: number | null, caliber: Caliber): Caliber => {
  const { bases } = useBases(caliberId, caliber)
  return useMemo(
    () =>
      inheritFrom(
        caliber,
        bases.map((base) => readEntry(base).caliber),
      ),
    [caliber, bases],
  )
}
