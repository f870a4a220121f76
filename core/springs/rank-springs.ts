import type { CaliberValues } from '../record/caliber.ts'
import { emptyCase, fillCase, type SpringCase, type SpringTask, springTask } from './spring-case.ts'
import {
  type SpringReason,
  type SpringReasonCode,
  type SpringVerdict,
  springReasons,
  springVerdicts,
} from './spring-reasons.ts'
import type { StockSpring } from './stock-spring.ts'

/** A spring with what it would do in the caliber. Figures are null where they cannot be known. */
export interface RankedSpring {
  /** Where it stands in the tray that was given. */
  readonly index: number
  readonly spring: StockSpring
  readonly verdict: SpringVerdict
  readonly heightClearanceMm: number | null
  /** Share of the free space. */
  readonly fill: number | null
  /** Theoretical (development) turns. */
  readonly turns: number | null
  /** Hours that these turns give, or the stop work where it allows fewer. */
  readonly goingHours: number | null
  /** Torque gained in each turn, against the spring specified. */
  readonly torqueRate: number | null
  /** Torque at full wind, against the spring specified. */
  readonly torqueFullWind: number | null
  readonly reasons: readonly SpringReason[]
}

export interface SpringRanking {
  readonly ranked: readonly RankedSpring[]
  /** How many springs of the tray came to each verdict. */
  readonly counts: Readonly<Record<SpringVerdict, number>>
}

const rows = Object.entries(springReasons).map(([code, row]) => ({
  code: code as SpringReasonCode,
  ...row,
  rank: springVerdicts.indexOf(row.atBest),
}))
const gravestFirst = rows.toSorted((a, b) => b.rank - a.rank)
const doesNotFit = springVerdicts.indexOf('does-not-fit')

/** The gravest reason decides. */
const rankOf = (found: SpringCase, task: SpringTask): number => {
  for (const { rank, holds } of gravestFirst) if (holds(found, task)) return rank
  return 0
}

const unlike = (ratio: number): number => (Number.isNaN(ratio) ? 0 : Math.abs(Math.log(ratio)))

/** How far a spring lies from the one specified: torque counts most, then height and length; what is at hand comes first. */
const distanceOf = (found: SpringCase): number => {
  const asSpecified = unlike(found.torqueFullWind) + 0.5 * unlike(found.torqueRate) + unlike(1 + found.longerShare) / 4
  const inBarrel = Number.isNaN(found.torqueFullWind) && !Number.isNaN(found.fill) ? Math.abs(found.fill - 0.5) : 0
  const end = found.end === 'same' ? 0 : 0.02
  return Math.min(99, asSpecified + inBarrel + end + (found.noneLeft ? 0.005 : 0))
}

/** Of springs that do not fit: in hundredths of a millimetre, roughly, for an order and nothing more. */
const sizesApart = ({ higherMm, thickerMm }: SpringCase): number =>
  Math.min(99, 100 * (Math.abs(higherMm || 0) + Math.abs(thickerMm || 0)))

const known = (figure: number): number | null => (Number.isFinite(figure) ? figure : null)

const described = (task: SpringTask, spring: StockSpring, index: number): RankedSpring => {
  const found = fillCase(emptyCase(), task, spring)
  return {
    index,
    spring,
    verdict: springVerdicts[rankOf(found, task)] ?? 'does-not-fit',
    heightClearanceMm: known(found.clearanceMm),
    fill: known(found.fill),
    turns: known(found.turns),
    goingHours: known(found.hours),
    torqueRate: known(found.torqueRate),
    torqueFullWind: known(found.torqueFullWind),
    reasons: rows
      .filter((row) => row.holds(found, task))
      .map(({ code, figures }) => ({ code, figures: figures(found, task) })),
  }
}

/**
 * The springs of a tray ranked for a caliber, the best first and `most` of them: by verdict, then by how near each comes
 * to the spring that the maker specified. Every spring is weighed and counted; only those given back are described, and
 * only of the verdicts that are `wanted`.
 * @example
 * rankSprings({ barrelDepthMm: 1.6 }, [{ supplierRef: 'A1', heightMm: 1.7, thicknessMm: 0.1, lengthMm: 350 }]).ranked[0]?.verdict // 'does-not-fit'
 */
export const rankSprings = (
  values: CaliberValues,
  springs: readonly StockSpring[],
  most: number = springs.length,
  wanted: readonly SpringVerdict[] = springVerdicts,
): SpringRanking => {
  const task = springTask(values)
  const unwanted = springVerdicts.map((verdict) => !wanted.includes(verdict))
  const found = emptyCase()
  const keys = new Float64Array(springs.length)
  const tally = springVerdicts.map(() => 0)
  springs.forEach((spring, index) => {
    const rank = rankOf(fillCase(found, task, spring), task)
    tally[rank] = (tally[rank] ?? 0) + 1
    keys[index] = unwanted[rank]
      ? Number.POSITIVE_INFINITY
      : rank * 100 + (rank === doesNotFit ? sizesApart(found) : distanceOf(found))
  })
  const last = most >= springs.length ? Number.POSITIVE_INFINITY : (keys.slice().sort()[Math.max(0, most - 1)] ?? 0)
  const chosen: number[] = []
  keys.forEach((key, index) => {
    if (key <= last && Number.isFinite(key)) chosen.push(index)
  })
  chosen.sort((a, b) => (keys[a] ?? 0) - (keys[b] ?? 0) || a - b)
  const ranked = chosen.slice(0, most).flatMap((index) => {
    const spring = springs[index]
    return spring === undefined ? [] : [described(task, spring, index)]
  })
  const counts = Object.fromEntries(springVerdicts.map((verdict, rank) => [verdict, tally[rank] ?? 0]))
  return { ranked, counts: counts as Record<SpringVerdict, number> }
}
