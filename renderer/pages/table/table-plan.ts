import type { CallInput, CallOutput } from '../../../core/api/contract.ts'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { layOver } from '../../../core/record/lay-over.ts'

type Names = CallOutput<'calibers.save-many'>['names']
type Items = CallInput<'calibers.save-many'>['items']

/** A caliber that the table would bring in, and the row it stands in. */
export interface Offered {
  readonly row: number
  readonly entry: CaliberEntry
}
/** What is to be done with a row whose name stands in the library, or further up in the table, already. */
export interface Decision {
  readonly choice: 'update' | 'both' | 'skip'
  /** The designation under which both are kept. */
  readonly designation: string
}
export interface Duplicate extends Offered {
  readonly standing: number | null
  /** The row further up that has the same name. */
  readonly twin: number | null
}
export interface Plan {
  readonly items: Items
  /** For each item, the row that it came from. */
  readonly rows: readonly number[]
}

/** The rows whose names stand already. */
export const duplicatesOf = (offered: readonly Offered[], names: Names): Duplicate[] =>
  offered.flatMap((one, index) => {
    const { standing = null, twin = null } = names[index] ?? {}
    return standing === null && twin === null
      ? []
      : [{ ...one, standing, twin: twin === null ? null : (offered[twin]?.row ?? null) }]
  })

/** The rows to be stored, after what was decided of those that stand already; undecided ones are left out. */
export const planOf = (
  offered: readonly Offered[],
  duplicates: readonly Duplicate[],
  decisions: ReadonlyMap<number, Decision>,
): Plan => {
  const items: Items = []
  const rows: number[] = []
  const add = (caliberId: number | null, entry: CaliberEntry, row: number) => {
    items.push({ caliberId, entry })
    rows.push(row)
  }
  for (const { row, entry } of offered) {
    const duplicate = duplicates.find((one) => one.row === row)
    if (duplicate === undefined) {
      add(null, entry, row)
      continue
    }
    const decision = decisions.get(row)
    if (decision?.choice === 'both') add(null, { ...entry, designation: decision.designation.trim() }, row)
    if (decision?.choice !== 'update') continue
    const isTwin = (other: number) =>
      other === duplicate.twin || duplicates.some((one) => one.row === other && one.twin === duplicate.twin)
    const twinAt = duplicate.twin === null ? -1 : rows.findIndex(isTwin)
    const twin = items[twinAt]
    // A twin that is kept beside under another name is not the one meant.
    const meant = twin !== undefined && decisions.get(rows[twinAt] ?? -1)?.choice !== 'both'
    if (meant) items[twinAt] = { ...twin, entry: layOver(twin.entry, entry) }
    else add(duplicate.standing, entry, row)
  }
  return { items, rows }
}
