import type { ProofLine } from '../../../core/api/contract.ts'
import { proofs } from '../../../core/proofs/index.ts'
import { type Standing, standingOf, standings } from '../../../core/proofs/standing.ts'
import { foldName } from '../../../core/record/bases.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { standingWord } from '../../../core/wording/standing.ts'

export type Grouping = 'proof' | 'caliber' | 'severity'

/** What is to be seen; an empty text stands for all. */
export interface SheetFilter {
  readonly words: string
  readonly maker: string
  readonly proof: string
  readonly standings: readonly Standing[]
}

export interface SheetGroup {
  readonly key: string
  readonly title: string
  readonly lines: readonly ProofLine[]
}

const atHead = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)
const proofOrder: ReadonlyMap<string, number> = new Map(proofs.map(({ id }, at) => [id, at]))

/** The lines that a filter lets through: every word in the caliber's name, the proof's title or the sentence. */
export const filterLines = (
  lines: readonly ProofLine[],
  { words, maker, proof, standings: wanted }: SheetFilter,
): readonly ProofLine[] => {
  const sought = foldName(words).split(' ').filter(Boolean)
  return lines.filter((line) => {
    if (maker !== '' && line.maker !== maker) return false
    if (proof !== '' && line.proof !== proof) return false
    if (!wanted.includes(standingOf(line))) return false
    if (sought.length === 0) return true
    const text = foldName(`${line.maker} ${line.designation} ${proofTitle(line.proof)} ${line.message}`)
    return sought.every((word) => text.includes(word))
  })
}

const groupOf: Readonly<Record<Grouping, (line: ProofLine) => readonly [key: string, title: string]>> = {
  proof: ({ proof }) => [proof, proofTitle(proof)],
  caliber: ({ caliberId, maker, designation }) => [String(caliberId), `${maker} ${designation}`],
  severity: (line) => [standingOf(line), atHead(standingWord(standingOf(line)))],
}

const standingRank = (line: ProofLine): number => standings.indexOf(standingOf(line))
const proofRank = ({ proof }: ProofLine): number => proofOrder.get(proof) ?? proofOrder.size

/** Lines in groups: proofs in their own order, calibers in that of the list, severities the gravest first, as the lines within each. */
export const groupLines = (lines: readonly ProofLine[], by: Grouping): readonly SheetGroup[] => {
  const groups = new Map<string, { key: string; title: string; lines: ProofLine[] }>()
  for (const line of lines) {
    const [key, title] = groupOf[by](line)
    const group = groups.get(key)
    if (group) group.lines.push(line)
    else groups.set(key, { key, title, lines: [line] })
  }
  const rank = by === 'proof' ? proofRank : by === 'severity' ? standingRank : () => 0
  const first = ({ lines: [line] }: SheetGroup) => (line === undefined ? 0 : rank(line))
  const sorted = [...groups.values()].sort((one, other) => first(one) - first(other))
  for (const group of sorted) group.lines.sort((one, other) => standingRank(one) - standingRank(other))
  return sorted
}
