import type { CallOutput, ParsedInput } from '../../core/api/contract.ts'
import type { StockSpring } from '../../core/springs/stock-spring.ts'
import type { Library } from '../store/library.ts'
import { foreseeSprings, saveSprings } from '../store/springs.ts'

/** Brings a list of springs in on its tray as one step, or says what that would do. */
export const saveList = async (
  library: Library,
  { tray, springs, replace, dryRun }: ParsedInput<'springs.save-many'>,
): Promise<CallOutput<'springs.save-many'>> => {
  const onTray = springs.map(({ tray: _, ...spring }): StockSpring => (tray === '' ? spring : { tray, ...spring }))
  const replaced = replace ? tray : null
  if (dryRun) return foreseeSprings(library, onTray, replaced)
  const count = `${springs.length} ${springs.length === 1 ? 'spring' : 'springs'}`
  const action = `import of ${count}${tray === '' ? '' : ` on ${tray}`}`
  return saveSprings(library, onTray, { action, replace: replaced })
}
