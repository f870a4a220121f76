import { useEffect, useMemo, useState } from 'react'
import type { StockCounts } from '../../../core/api/contract.ts'
import { traysOf } from '../../../core/springs/find-springs.ts'
import type { StockSpring } from '../../../core/springs/stock-spring.ts'
import { call, useSprings } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'

/** How long changes to the mapping rest before the library is asked what they would do. */
const restMs = 250
/** Springs asked about in one call. */
const springsAtOnce = 2_000

interface Foreseen {
  readonly counts: StockCounts | null
  /** How many springs the library has been asked about. */
  readonly asked: number
  readonly problem: string
}
const nothing: Foreseen = { counts: null, asked: 0, problem: '' }

/** What bringing springs in on a tray would do, asked of the library some at a time. */
export const useForeseen = (springs: readonly StockSpring[], tray: string, replace: boolean) => {
  const { data } = useSprings()
  const trays = useMemo(() => traysOf(data?.springs ?? []), [data])
  const standing = trays.find((one) => one.tray === tray)?.springs ?? 0
  const [foreseen, setForeseen] = useState(nothing)
  useEffect(() => {
    setForeseen(nothing)
    if (springs.length === 0) return
    let current = true
    const ask = async () => {
      const sum = { added: 0, updated: 0, unchanged: 0 }
      for (let at = 0; at < springs.length && current; at += springsAtOnce) {
        const some = springs.slice(at, at + springsAtOnce)
        const counts = await call('springs.save-many', { tray, springs: some, dryRun: true })
        for (const key of ['added', 'updated', 'unchanged'] as const) sum[key] += counts[key]
        if (current) setForeseen({ ...nothing, asked: at + some.length })
      }
      // A list names each spring once, so that what the tray has besides is what is left of it.
      const removed = replace ? Math.max(0, standing - sum.updated - sum.unchanged) : 0
      if (current) setForeseen({ counts: { ...sum, removed }, asked: springs.length, problem: '' })
    }
    const timer = setTimeout(() => {
      ask().catch((error: unknown) => current && setForeseen({ ...nothing, problem: failureText(error) }))
    }, restMs)
    return () => {
      current = false
      clearTimeout(timer)
    }
  }, [springs, tray, replace, standing])
  return { ...foreseen, trays: trays.map((one) => one.tray) }
}
