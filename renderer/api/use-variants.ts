import { useQuery } from '@tanstack/react-query'
import type { CallOutput } from '../../core/api/contract.ts'
import { call } from './hooks.ts'

const none: CallOutput<'caliber.variants'>['variants'] = []

/** The calibers of the library that are based on one, directly or through others; none of one not saved yet. */
export const useVariants = (id: number | null) => {
  const { data } = useQuery({
    queryKey: ['caliber.variants', id],
    queryFn: () => call('caliber.variants', { id: id ?? 0 }),
    enabled: id !== null,
  })
  return data?.variants ?? none
}
