import { useEffect, useState } from 'react'
import type { CallInput } from '../../../core/api/contract.ts'
import { call, useChange } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'
import { type Decision, type Duplicate, duplicatesOf, planOf } from './table-plan.ts'
import type { TableReading } from './table-reading.ts'
import type { TableState } from './table-state.ts'
import type { Stored } from './table-stored.tsx'

type Items = CallInput<'calibers.save-many'>['items']

/** Which names stand already; the library says it, for it knows when two names are one. */
const namesOf = async (items: Items) =>
  (await call('calibers.save-many', { items, action: 'trial', dryRun: true })).names

/** Looks a table over and then stores it, all of it or nothing; closed again by any change of the table. */
export const useTableStore = (state: TableState, reading: TableReading, done: (stored: Stored) => void) => {
  const [duplicates, setDuplicates] = useState<readonly Duplicate[]>([])
  const [decisions, setDecisions] = useState<ReadonlyMap<number, Decision>>(new Map())
  const [open, setOpen] = useState(false)
  const [problem, setProblem] = useState('')
  const saving = useChange('calibers.save-many')
  const { offered, refusals } = reading
  const plan = planOf(offered, duplicates, decisions)

  // biome-ignore lint/correctness/useExhaustiveDependencies: what was looked over is no longer what would be stored
  useEffect(() => {
    setOpen(false)
    setProblem('')
  }, [reading])

  const review = async () => {
    setProblem('')
    try {
      const names = await namesOf(offered.map(({ entry }) => ({ caliberId: null, entry })))
      setDuplicates(duplicatesOf(offered, names))
      setOpen(true)
    } catch (error) {
      setProblem(failureText(error))
    }
  }

  const decide = (rows: readonly number[], change: Partial<Decision>) =>
    setDecisions((before) => {
      const next = new Map(before)
      for (const row of rows) {
        const designation = offered.find((one) => one.row === row)?.entry.designation ?? ''
        next.set(row, { ...(before.get(row) ?? { choice: 'skip', designation: `${designation} ` }), ...change })
      }
      return next
    })

  const store = async () => {
    const { items, rows } = plan
    setProblem('')
    try {
      const unnamed = rows.find((_, index) => items[index]?.entry.designation === '')
      const names = await namesOf(items)
      const taken = items.findIndex(({ caliberId }, index) => {
        const name = names[index]
        return caliberId === null && name !== undefined && (name.standing !== null || name.twin !== null)
      })
      const item = items[taken]
      if (unnamed !== undefined || item) {
        const row = (unnamed ?? rows[taken] ?? 0) + 1
        setProblem(
          unnamed !== undefined
            ? `Row ${row} is to be kept beside the other, but has no designation of its own; write one.`
            : `Row ${row}: ${item?.entry.maker} ${item?.entry.designation} is taken already; write a designation that differs from it.`,
        )
        return
      }
      const count = items.length
      const action = `${state.pasted ? 'paste' : 'table'} of ${count === 1 ? '1 caliber' : `${count} calibers`}`
      const { ids } = await saving.mutateAsync({ items, action })
      const went = new Map(rows.map((row, index) => [row, ids[index] ?? null]))
      setDecisions(new Map())
      done({ count, refusals: refusals.map((one) => ({ ...one, caliberId: went.get(one.place.row) ?? null })) })
    } catch (error) {
      setProblem(failureText(error))
    }
  }

  return {
    review,
    store,
    decide,
    close: () => setOpen(false),
    open,
    problem,
    duplicates,
    decisions,
    count: plan.items.length,
    busy: saving.isPending,
  }
}
