import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { Caliber } from '../record/caliber.ts'
import { chooseReading } from '../record/choose-reading.ts'
import { readField } from '../record/read-field.ts'
import type { Reading } from '../record/reading.ts'
import { customaryLeaves } from '../trains/customary-leaves.ts'
import { proofs } from './index.ts'
import { type Misreading, misreadings, type Slip } from './misreadings.ts'
import type { Finding, Judgement, Outcome, Proof } from './proof.ts'
import { judgeProof } from './prove.ts'

/** One value that, changed by a plausible slip, would make a proof agree. */
export interface Misprint {
  readonly field: CaliberFieldKey
  readonly printed: string
  /** What may have been meant. */
  readonly meant: string
  readonly slip: Slip
  /** What the proof then finds, and whether that is something else than before. */
  readonly found: number | null
  readonly unit: string
  readonly changesFound: boolean
}

const most = 5
const order: Readonly<Record<Slip, number>> = {
  'digits-exchanged': 0,
  'fraction-misread': 0,
  'digit-misread': 1,
  'digit-doubled': 1,
  'decimal-shifted': 1,
  neighbour: 2,
  'other-digit': 3,
}
const gravity: Readonly<Record<Outcome, number>> = {
  agrees: 0,
  'cannot-check': 1,
  doubtful: 1,
  'outside-range': 2,
  disagrees: 3,
}

const nearTeeth = [1, -1, 2, -2, 3, -3] as const

const neighbours = (key: CaliberFieldKey, value: number): Misreading[] => {
  const near = key.endsWith('Pinion')
    ? customaryLeaves
    : /(?:Wheel|Teeth|Driver)$/.test(key)
      ? nearTeeth.map((teeth) => value + teeth)
      : []
  return near.map((count) => ({ printed: String(count), slip: 'neighbour' }))
}

const looksAt = (proof: Proof, key: CaliberFieldKey): boolean => proof.needs.includes(key) || proof.uses.includes(key)

const gravityOf = (proof: Proof, caliber: Caliber): number => gravity[judgeProof(proof, caliber).outcome]

const foundOf = (judgement: Judgement): number | null => ('found' in judgement ? judgement.found : null)

interface Ranked extends Misprint {
  readonly cured: number
  readonly unusual: boolean
  readonly distance: number
}

const byLikelihood = (a: Ranked, b: Ranked): number =>
  order[a.slip] - order[b.slip] || Number(a.unusual) - Number(b.unusual) || b.cured - a.cured || a.distance - b.distance

const helpOfField = ({ proof, judgement }: Finding, caliber: Caliber, key: CaliberFieldKey): Ranked[] => {
  const value = caliber.values[key]
  if (typeof value !== 'number' || value === 0) return []
  const readings: readonly Reading[] = caliber.readings[key] ?? []
  const printed = readings.find(({ chosen }) => chosen)?.printed ?? String(value)
  let others: readonly { readonly other: Proof; readonly before: number }[] | undefined
  const tried = new Set<number>()
  const found: Ranked[] = []
  // The likeliest slip first, so that a value reached by two is put down to that one.
  const slips = [...misreadings(printed), ...neighbours(key, value)].sort((a, b) => order[a.slip] - order[b.slip])
  for (const { printed: meant, slip } of slips) {
    const read = readField(key, meant)
    if (!read.ok || typeof read.value !== 'number' || tried.has(read.value)) continue
    tried.add(read.value)
    const { quantity } = read
    const reading = { printed: meant, value: read.value, ...(quantity && { quantity }), chosen: true }
    const changed = chooseReading(caliber, key, reading)
    const then = judgeProof(proof, changed)
    if (then.outcome !== 'agrees') continue
    others ??= proofs
      .filter((other) => looksAt(other, key) && other.appliesTo?.(caliber.values, caliber.readings) !== false)
      .map((other) => ({ other, before: gravityOf(other, caliber) }))
    const turns = others.map(({ other, before }) => gravityOf(other, changed) - before)
    if (turns.some((turn) => turn > 0)) continue
    found.push({
      field: key,
      printed,
      meant,
      slip,
      found: then.found,
      unit: then.unit,
      changesFound: then.found !== foundOf(judgement),
      cured: turns.filter((turn) => turn < 0).length,
      unusual: read.remark !== undefined,
      distance: Math.abs(Math.log(read.value / value)),
    })
  }
  return found
}

/**
 * The single values that, each changed by a plausible slip, would make a disagreeing proof agree without making another
 * worse, the likeliest first and five at most. Nothing for any other outcome.
 */
export const misprintHelp = (finding: Finding, caliber: Caliber): readonly Misprint[] => {
  if (finding.judgement.outcome !== 'disagrees') return []
  const { needs, uses } = finding.proof
  return [...needs, ...uses]
    .flatMap((key) => helpOfField(finding, caliber, key))
    .sort(byLikelihood)
    .slice(0, most)
    .map(({ cured: _, unusual: __, distance: ___, ...misprint }) => misprint)
}
