import {
  keepPreviousData,
  useInfiniteQuery,
  useMutation,
  useQueries,
  useQuery,
  useQueryClient,
} from '@tanstack/react-query'
import { type Client, createClient } from '../../core/api/client.ts'
import type { CaliberRow, CallInput, CallName } from '../../core/api/contract.ts'
import { writes } from '../../core/api/dispatcher.ts'
import { allSprings } from './all-springs.ts'
import { transport } from './transport.ts'

const ask = createClient(transport)
let changes = 0
const keepsCalibers = (name: CallName): boolean => name.startsWith('draft.') || name === 'library.back-up'

/** Calls the library; throws `LignebookError` where the answer is a failure. */
export const call: Client = async (name, input) => {
  const answer = await ask(name, input)
  if (writes(name) && !keepsCalibers(name)) changes += 1
  return answer
}

/** How many calls of this page may have changed a caliber. */
export const changesMade = (): number => changes

/** Rows asked for at once. */
export const rowsPerPage = 100

export const useStatus = () => useQuery({ queryKey: ['library.status'], queryFn: () => call('library.status', {}) })

const onePage = (page: number) => ({
  queryKey: ['calibers.page', page],
  queryFn: () => call('calibers.page', { offset: page * rowsPerPage, limit: rowsPerPage }),
})

/** The rows on the named pages of the list, by their place in it, and how many there are in all. */
export const useCaliberRows = (pages: readonly number[]) => {
  const first = useQuery(onePage(0))
  const others = useQueries({ queries: pages.filter((page) => page > 0).map(onePage) })
  const rows = new Map<number, CaliberRow>()
  const wanted = pages.filter((page) => page > 0)
  const add = (page: number, found: readonly CaliberRow[] | undefined) =>
    found?.forEach((row, index) => {
      rows.set(page * rowsPerPage + index, row)
    })
  add(0, first.data?.rows)
  others.forEach((other, index) => {
    add(wanted[index] ?? 0, other.data?.rows)
  })
  return { rows, total: first.data?.total, error: first.error ?? others.find((other) => other.error)?.error ?? null }
}

export const useSearch = (words: string) =>
  useQuery({
    queryKey: ['calibers.search', words],
    queryFn: () => call('calibers.search', { words, limit: 200 }),
    enabled: words !== '',
    placeholderData: keepPreviousData,
  })

export const useCaliber = (id: number) =>
  useQuery({ queryKey: ['caliber.read', id], queryFn: () => call('caliber.read', { id }) })

export const useSources = () => useQuery({ queryKey: ['sources.list'], queryFn: () => call('sources.list', {}) })

export const useSourceUses = (key: string) =>
  useQuery({ queryKey: ['source.uses', key], queryFn: () => call('source.uses', { key }) })

/** The whole tray and every list; of many thousands of springs, comparing each with what was there would cost more than it spares. */
export const useSprings = () => useQuery({ queryKey: ['springs.all'], queryFn: allSprings, structuralSharing: false })

/** The order list, oldest line first. */
export const useOrders = () => useQuery({ queryKey: ['orders.list'], queryFn: () => call('orders.list', {}) })

/** The tables of old gauges that their owner entered, in the order entered. */
export const useGauges = () => useQuery({ queryKey: ['gauges.list'], queryFn: () => call('gauges.list', {}) })

const historyPage = 100

/** The changes, latest first, a page at a time. */
export const useHistory = () =>
  useInfiniteQuery({
    queryKey: ['history.list'],
    queryFn: ({ pageParam }) =>
      call('history.list', { limit: historyPage, ...(pageParam === 0 ? {} : { before: pageParam }) }),
    initialPageParam: 0,
    getNextPageParam: ({ revisions }) => (revisions.length < historyPage ? undefined : revisions.at(-1)?.id),
  })

/** What one change did, some calibers at a time. */
export const useRevision = (id: number) =>
  useInfiniteQuery({
    queryKey: ['history.read', id],
    queryFn: ({ pageParam }) => call('history.read', { id, offset: pageParam }),
    initialPageParam: 0,
    getNextPageParam: ({ total }, pages) => {
      const shown = pages.reduce((sum, { changes }) => sum + changes.length, 0)
      return shown < total ? shown : undefined
    },
  })

/** A call that changes the library; whatever is on the page is read again after it. */
export const useChange = <N extends CallName>(name: N) => {
  const queries = useQueryClient()
  return useMutation({
    mutationFn: (input: CallInput<N>) => call(name, input),
    onSuccess: () => queries.invalidateQueries(),
  })
}
