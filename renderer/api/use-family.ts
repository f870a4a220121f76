import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { useMemo } from 'react'
import type { Caliber } from '../../core/record/caliber.ts'
import { inheritFrom } from '../../core/record/inherit.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { call } from './hooks.ts'

/** The caliber over the bases that the library holds of it; itself where it has none, or until they are read. */
export const useFamily = (caliberId: number | null, caliber: Caliber): Caliber => {
  const { maker = '', basedOn = '' } = caliber.values
  const { data } = useQuery({
    queryKey: ['caliber.bases', caliberId, maker, basedOn],
    queryFn: () => call('caliber.bases', { caliberId, maker, basedOn }),
    enabled: basedOn !== '',
    placeholderData: keepPreviousData,
  })
  return useMemo(() => {
    const bases = basedOn === '' ? [] : (data?.bases ?? [])
    return inheritFrom(
      caliber,
      bases.map((base) => readEntry(base).caliber),
    )
  }, [caliber, basedOn, data])
}
