import { keepPreviousData, useQuery } from '@tanstack/react-query'
import type { Caliber } from '../../core/record/caliber.ts'
import { call } from './hooks.ts'

const none = { bases: [], ids: [] }

/** What the library holds of the calibers on which one is based, the nearest first, until they are read those before. */
export const useBases = (caliberId: number | null, { values }: Caliber) => {
  const { maker = '', basedOn = '' } = values
  const { data } = useQuery({
    queryKey: ['caliber.bases', caliberId, maker, basedOn],
    queryFn: () => call('caliber.bases', { caliberId, maker, basedOn }),
    enabled: basedOn !== '',
    placeholderData: keepPreviousData,
  })
  return basedOn === '' ? none : (data ?? none)
}
