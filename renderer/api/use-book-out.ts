import { useMutation, useQueryClient } from '@tanstack/react-query'
import type { CallInput, CallOutput } from '../../core/api/contract.ts'
import { call } from './hooks.ts'

/**
 * Books springs out. Of all that is on the page the tray alone is not read again: how many are left is known, and a tray may
 * hold many thousands.
 */
export const useBookOut = () => {
  const queries = useQueryClient()
  return useMutation({
    mutationFn: (input: CallInput<'spring.book-out'>) => call('spring.book-out', input),
    onSuccess: ({ left }, { id }) => {
      queries.setQueryData<CallOutput<'springs.all'>>(['springs.all'], (now) =>
        now === undefined
          ? now
          : { springs: now.springs.map((spring) => (spring.id === id ? { ...spring, inStock: left } : spring)) },
      )
      return queries.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'springs.all' })
    },
  })
}
