import { type Standing, standings } from '../../../core/proofs/standing.ts'
import { countStanding } from '../../../core/wording/standing.ts'
import type { SheetGroup } from './sheet-rows.ts'

interface GroupHeadProps {
  readonly group: SheetGroup
  /** How the findings of the group stand in the whole library; the lines below are counted where it is not given. */
  readonly counts: ReadonlyMap<Standing, number> | undefined
}

/** The heading of a group, with how many stand how. */
export const GroupHead = ({ group, counts }: GroupHeadProps) => {
  const said = standings
    .map((standing) => [standing, counts?.get(standing) ?? 0] as const)
    .filter(([, count]) => count > 0)
    .map(([standing, count]) => countStanding(standing, count))
  const { length } = group.lines
  return (
    <h2 className="sheet-group">
      {group.title}{' '}
      <span className="quiet">{counts ? said.join(' · ') : length === 1 ? '1 finding' : `${length} findings`}</span>
    </h2>
  )
}
