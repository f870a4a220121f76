import type { CaliberRow } from '../../core/api/contract.ts'
import { type CaliberNames, isNearMaker, type NearReason, nearName, nearReasons } from '../../core/record/near-names.ts'
import { isOneEdit } from '../../core/record/one-edit.ts'
import { rowColumns } from './calibers.ts'
import { type Library, rows } from './library.ts'
import { after, compact } from './search-keys.ts'
import { searchStatements } from './search-statements.ts'

export type NearCaliber = CaliberRow & { readonly why: NearReason }

/** Looked at before they are held against the names typed; a library with more of one name has other worries. */
const most = 400

const sameNamed = (library: Library, names: readonly string[]): number[] =>
  library
    .prepare(
      `with typed (name) as (select value from json_each(?))
       select id from caliber where designation_compact in (select name from typed)
       union select caliber_id from alias where compact in (select name from typed) limit ${most}`,
    )
    .pluck()
    .all(JSON.stringify(names)) as number[]

const nearMakers = (library: Library, maker: string): string[] => {
  const { firstMaker, nextMaker } = searchStatements(library)
  const found: string[] = []
  for (let one = firstMaker('', after('')); one !== undefined; one = nextMaker(one, after(''))) {
    if (isNearMaker(maker, one)) found.push(one)
  }
  return found
}

/** Calibers of a maker whose designation is one character off. */
const oneCharacterOff = (library: Library, maker: string, designation: string): number[] =>
  rows(
    library,
    library.db
      .selectFrom('caliber')
      .select(['id', 'designation_compact as designation'])
      .where('maker_folded', '=', maker),
  )
    .filter((row) => isOneEdit(row.designation, designation))
    .map(({ id }) => id)

/** Calibers that may be the one so named, the likeliest first, each with the reason. */
export const nearCalibers = async (
  library: Library,
  typed: CaliberNames,
  { except, limit }: { readonly except: number | null; readonly limit: number },
): Promise<NearCaliber[]> => {
  const designation = compact(typed.designation)
  if (designation === '' || compact(typed.maker) === '') return []
  const names = [designation, ...(typed.alsoKnownAs ?? []).map(compact)].filter((name) => name !== '')
  const makers = nearMakers(library, typed.maker)
  const ids = new Set([
    ...sameNamed(library, names),
    ...makers.flatMap((maker) => oneCharacterOff(library, maker, designation)).slice(0, most),
  ])
  const aliases = library.prepare('select alias from alias where caliber_id = ?').pluck()
  const near: NearCaliber[] = []
  const candidates = library.db
    .selectFrom('caliber')
    .select(rowColumns)
    .where('id', 'in', [...ids])
    .orderBy('id')
  for (const row of rows(library, candidates)) {
    const why = nearName(typed, { ...row, alsoKnownAs: aliases.all(row.id) as string[] })
    if (why !== undefined && row.id !== except) near.push({ ...row, why })
  }
  return near.sort((a, b) => nearReasons.indexOf(a.why) - nearReasons.indexOf(b.why) || a.id - b.id).slice(0, limit)
}
