import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import { bestSpringLength, mostTurns, springCoils, springFill } from '../formulas/barrel.ts'
import { goingHours } from '../formulas/going-hours.ts'
import { arborToThickness } from '../formulas/spring-bend.ts'
import { stageCounts, stagesToCentre } from '../formulas/train-stages.ts'
import type { WorkingStep } from '../proofs/proof.ts'
import { countsWhere, fractionsOf } from '../proofs/train-working.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { barrelSizeKeys, coilSpace } from './barrel-sizes.ts'
import { barrelTurnHours } from './barrel-turn.ts'
import { usableTurns } from './usable-turns.ts'

/** What the bench asks of a barrel and its strip, in the order in which it is worked out. */
export const fitLineKeys = [
  'within-bridle',
  'coils-down',
  'coils-wound',
  'turns',
  'fill',
  'best-length',
  'most-turns',
  'hours-per-turn',
  'hours',
  'height-clearance',
  'arbor-to-thickness',
] as const
export type FitLineKey = (typeof fitLineKeys)[number]

/** One figure with its working, or the fields without which it cannot be had. */
export type FitLine =
  | { readonly key: FitLineKey; readonly value: number; readonly working: WorkingStep }
  | { readonly key: FitLineKey; readonly missing: readonly CaliberFieldKey[] }

const without = (values: CaliberValues, keys: readonly CaliberFieldKey[]) =>
  keys.filter((key) => values[key] === undefined)

const barrelLines = (values: CaliberValues): readonly FitLine[] => {
  const { barrelInsideMm: inside, barrelArborMm: d, springThicknessMm: e, springLengthMm: length } = values
  const line = (key: FitLineKey, value: number, formula: string, unit?: string): FitLine => ({
    key,
    value,
    working: {
      formula,
      where: Object.fromEntries(barrelSizeKeys.map((size) => [size, values[size] ?? ''])),
      gives: value,
      ...(unit === undefined ? {} : { unit }),
    },
  })
  const missing = (keys: readonly FitLineKey[], of: readonly CaliberFieldKey[]): readonly FitLine[] =>
    keys.map((key) => ({ key, missing: without(values, of) }))
  const ofBarrel = barrelSizeKeys.filter((key) => key !== 'springLengthMm')
  if (inside === undefined || d === undefined || e === undefined)
    return [
      ...missing(['coils-down', 'coils-wound', 'turns', 'fill'], barrelSizeKeys),
      ...missing(['best-length', 'most-turns'], ofBarrel),
    ]

  const D = plain(coilSpace(values, inside))
  const barrel = { barrelInsideMm: D, barrelArborMm: d, springThicknessMm: e }
  const [inner, hub, thick] = [onPaper(D), onPaper(d), onPaper(e)]
  const squares = `${inner}² − ${hub}²`
  const ofAny: readonly FitLine[] = [
    line('best-length', bestSpringLength(barrel), `π × (${squares}) ÷ (8 × ${thick})`, 'mm'),
    line('most-turns', mostTurns(barrel), `(√(2 × (${inner}² + ${hub}²)) − (${inner} + ${hub})) ÷ (2 × ${thick})`),
  ]
  const bridle: readonly FitLine[] =
    D === inside
      ? []
      : [line('within-bridle', D, `${onPaper(inside)} − 2 × ${onPaper(values.bridleThicknessMm ?? 0)}`, 'mm')]
  if (length === undefined)
    return [...bridle, ...missing(['coils-down', 'coils-wound', 'turns', 'fill'], barrelSizeKeys), ...ofAny]

  const sizes = { ...barrel, springLengthMm: length }
  const { down, wound, turns } = springCoils(sizes)
  const [R, r, long] = [onPaper(D / 2), onPaper(d / 2), onPaper(length)]
  const strip = `${long} × ${thick} ÷ π`
  return [
    ...bridle,
    line('coils-down', down, `(${R} − √(${R}² − ${strip})) ÷ ${thick}`),
    line('coils-wound', wound, `(√(${r}² + ${strip}) − ${r}) ÷ ${thick}`),
    line('turns', turns, `${onPaper(wound, 3)} − ${onPaper(down, 3)}`),
    line('fill', springFill(sizes), `4 × ${long} × ${thick} ÷ (π × (${squares}))`),
    ...ofAny,
  ]
}

const hourLines = (values: CaliberValues, turns: number | undefined): readonly FitLine[] => {
  const stages = stagesToCentre(values)
  const counts = stageCounts(values, stages)
  const hours = barrelTurnHours(values)
  const { hoursPerCentreTurn: centre, stopWorkTurns: stop } = values
  const fields = stages.flatMap(({ wheel, pinion }) => [wheel, pinion])
  if (counts === null || hours === null) {
    const missing = without(values, fields)
    return [
      { key: 'hours-per-turn', missing },
      { key: 'hours', missing },
    ]
  }
  const perTurn: FitLine = {
    key: 'hours-per-turn',
    value: hours,
    working: {
      formula: `${fractionsOf(counts.wheels, counts.pinions)}${centre === undefined ? '' : ` × ${centre}`}`,
      where: countsWhere(values, stages),
      gives: hours,
      unit: 'h',
    },
  }
  const used = turns === undefined ? stop : usableTurns(turns, values).turns
  if (used === undefined) return [perTurn, { key: 'hours', missing: without(values, barrelSizeKeys) }]
  const going = plain(goingHours(used, hours))
  const working = {
    formula: `${onPaper(used, 3)} × ${onPaper(hours, 3)}`,
    where: { turns: used, hoursPerTurn: hours },
    gives: going,
    unit: 'h',
  }
  return [perTurn, { key: 'hours', value: going, working }]
}

const plainLine = (
  values: CaliberValues,
  key: FitLineKey,
  [of, by]: readonly [CaliberFieldKey, CaliberFieldKey],
  work: (a: number, b: number) => { readonly value: number; readonly formula: string; readonly unit?: string },
): FitLine => {
  const [a, b] = [values[of], values[by]]
  if (typeof a !== 'number' || typeof b !== 'number') return { key, missing: without(values, [of, by]) }
  const { value, formula, unit } = work(a, b)
  const where = { [of]: a, [by]: b }
  return { key, value, working: { formula, where, gives: value, ...(unit === undefined ? {} : { unit }) } }
}

/**
 * How a spring sits in its barrel, each figure with its working as on paper; what cannot be had names what is missing.
 * The figures are those of `fitSpring`, which says null where this refuses.
 * @throws OutsideRange where the sizes do not go together, so that nothing is worked out from them.
 * @example
 * fitWorking({ barrelDepthMm: 1.6, springHeightMm: 1.5 }).find(({ key }) => key === 'height-clearance')?.working.formula // '1.6 − 1.5'
 */
export const fitWorking = (values: CaliberValues): readonly FitLine[] => {
  const barrel = barrelLines(values)
  const turns = barrel.find((line) => line.key === 'turns')
  return [
    ...barrel,
    ...hourLines(values, turns !== undefined && 'value' in turns ? turns.value : undefined),
    plainLine(values, 'height-clearance', ['barrelDepthMm', 'springHeightMm'], (depth, height) => ({
      value: plain(depth - height),
      formula: `${onPaper(depth)} − ${onPaper(height)}`,
      unit: 'mm',
    })),
    plainLine(values, 'arbor-to-thickness', ['barrelArborMm', 'springThicknessMm'], (hub, thickness) => ({
      value: arborToThickness(hub, thickness),
      formula: `${onPaper(hub)} ÷ ${onPaper(thickness)}`,
    })),
  ]
}
