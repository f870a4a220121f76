import type { CallOutput, ParsedInput } from '../../core/api/contract.ts'
import { proveCaliber } from '../../core/proofs/prove.ts'
import { weigh } from '../../core/proofs/severity.ts'
import { caliberStanding, type Standing, standingOf } from '../../core/proofs/standing.ts'
import { inheritFrom } from '../../core/record/inherit.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { sheetLine } from '../../core/wording/sheet-line.ts'
import { countCalibers, pageOfCalibers, readCaliber } from '../store/calibers.ts'
import type { Library } from '../store/library.ts'
import { basesOf } from './families.ts'

type Sheet = CallOutput<'proofs.sheet'>

/** Proves a stretch of the list, each caliber over its bases. */
export const proofsSheet = async (
  library: Library,
  { offset, limit, unchecked }: ParsedInput<'proofs.sheet'>,
): Promise<Sheet> => {
  const calibers: Sheet['calibers'] = { wrong: 0, doubtful: 0, sound: 0, unproved: 0 }
  const counts = new Map<string, Sheet['counts'][number]>()
  const lines: Sheet['lines'] = []
  const known: Parameters<typeof basesOf>[3] = new Map()
  for (const { id, maker, designation } of await pageOfCalibers(library, { offset, limit })) {
    const entry = await readCaliber(library, id)
    if (entry === null) continue
    const { caliber } = readEntry(entry)
    const bases = await basesOf(library, caliber, id, known)
    const whole = inheritFrom(
      caliber,
      bases.map((base) => readEntry(base).caliber),
    )
    const found = new Set<Standing>()
    for (const finding of proveCaliber(whole)) {
      const { proof, judgement } = finding
      const { severity } = weigh(proof.id, judgement.outcome, whole.overrules)
      const standing = standingOf({ outcome: judgement.outcome, severity })
      found.add(standing)
      const key = `${proof.id} ${standing}`
      const counted = counts.get(key) ?? { proof: proof.id, standing, count: 0 }
      counted.count += 1
      counts.set(key, counted)
      if (standing === 'agrees' || (standing === 'cannot-check' && !unchecked)) continue
      lines.push({ caliberId: id, maker, designation, ...sheetLine(finding, whole) })
    }
    calibers[caliberStanding(found)] += 1
  }
  return { total: await countCalibers(library), calibers, counts: [...counts.values()], lines }
}
