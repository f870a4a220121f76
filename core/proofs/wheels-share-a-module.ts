import { centreDistance } from '../formulas/centre-distance.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import type { CaliberValues, Depth } from '../record/caliber.ts'
import { depthParts, type ToothedField, toothedFields } from '../trains/depth-counts.ts'
import { asPrinted, furthestApart, type ModulePair, moduleOf, type SizeInModules } from '../trains/shared-module.ts'
import { defineProof } from './define-proof.ts'
import type { WorkingStep } from './proof.ts'

const doubtfulShare = 0.01

type SizeColumn = 'driverPitchMm' | 'drivenPitchMm' | 'centreDistanceMm'
const printOf = (depth: Depth, column: SizeColumn) => {
  const value = depth[column]
  return value === undefined ? undefined : (depth.quantities?.[column] ?? asPrinted(value))
}

/** A module is far below a millimetre, so its noughts are written too. */
const fourPlaces = (mm: number): string => mm.toFixed(4)

/** A stated count and its field. */
interface Count {
  readonly key: ToothedField
  readonly teeth: number
}

interface Judged {
  readonly depth: Depth
  /** The counts, where both are stated; without them only the centre distance can be held against the pitch radii. */
  readonly counts: readonly [driver: Count, driven: Count] | undefined
  readonly sizes: readonly SizeInModules[]
  readonly pair: ModulePair
}

/** The sizes of a depth by how many modules each comes to; without counts, centre distance against half of both diameters. */
const sizesOf = (depth: Depth, counts: Judged['counts']): readonly SizeInModules[] => {
  const first = printOf(depth, 'driverPitchMm')
  const second = printOf(depth, 'drivenPitchMm')
  const centres = printOf(depth, 'centreDistanceMm')
  if (counts === undefined) {
    if (!first || !second || !centres) return []
    const radii = {
      ...asPrinted(0),
      value: plain((first.value + second.value) / 2),
      exact: first.exact.add(second.exact).div(2),
      halfStep: plain((first.halfStep + second.halfStep) / 2),
    }
    return [
      { name: 'pitchRadiiMm', printed: radii, modules: 1 },
      { name: 'centreDistanceMm', printed: centres, modules: 1 },
    ]
  }
  const [driver, driven] = [counts[0].teeth, counts[1].teeth]
  return [
    ...(first ? [{ name: 'driverPitchMm', printed: first, modules: driver }] : []),
    ...(second ? [{ name: 'drivenPitchMm', printed: second, modules: driven }] : []),
    ...(centres ? [{ name: 'centreDistanceMm', printed: centres, modules: (driver + driven) / 2 }] : []),
  ]
}

const workingOf = ({ depth, counts, sizes }: Judged): readonly WorkingStep[] => {
  const { driver, driven, driverPitchMm, drivenPitchMm } = depth
  return sizes.map(({ name, printed, modules }): WorkingStep => {
    const mm = plain(printed.value)
    if (counts === undefined) {
      const formula =
        name === 'pitchRadiiMm'
          ? `(${onPaper(Number(driverPitchMm))} + ${onPaper(Number(drivenPitchMm))}) ÷ 2`
          : 'centre distance'
      return { formula, where: { driver, driven, [name]: mm }, gives: mm }
    }
    const [wheel, pinion] = counts
    const formula =
      name === 'centreDistanceMm'
        ? `2 × ${onPaper(mm)} ÷ (${wheel.teeth} + ${pinion.teeth})`
        : `${onPaper(mm)} ÷ ${modules}`
    return {
      formula,
      where: { driver, driven, [name]: mm, [wheel.key]: wheel.teeth, [pinion.key]: pinion.teeth },
      gives: fourPlaces(mm / modules),
    }
  })
}

const countOf = (key: ToothedField | undefined, values: Pick<CaliberValues, ToothedField>): Count | undefined => {
  const teeth = key && values[key]
  return key === undefined || teeth === undefined ? undefined : { key, teeth }
}

/** Each depth that can be judged, and the counts for want of which others cannot. */
const judgeDepths = (depths: readonly Depth[], values: Pick<CaliberValues, ToothedField>) => {
  const judged: Judged[] = []
  const unstated = new Set<ToothedField>()
  for (const depth of depths) {
    const parts = depthParts(depth)
    const driver = countOf(parts.driver, values)
    const driven = countOf(parts.driven, values)
    const counts = driver && driven && ([driver, driven] as const)
    const sizes = sizesOf(depth, counts)
    const pair = furthestApart(sizes)
    if (pair !== undefined) {
      judged.push({ depth, counts, sizes, pair })
      continue
    }
    if (parts.driver && !driver) unstated.add(parts.driver)
    if (parts.driven && !driven) unstated.add(parts.driven)
  }
  return { judged, unstated: [...unstated] }
}

/** The counts that were looked at. */
const fieldsOf = (judged: readonly Judged[]): readonly ToothedField[] => [
  ...new Set(judged.flatMap(({ counts = [] }) => counts.map(({ key }) => key))),
]

const shareOf = ({ first, gapMm }: ModulePair): number => gapMm / moduleOf(first)

/** Wheel and pinion of each depth share a module, and stand as far apart as it asks. */
export const wheelsShareAModule = defineProof({
  id: 'wheels-share-a-module',
  title: 'Wheels share a module',
  meaning:
    'The pitch diameters and the centre distance of a depth come to one module by the counts of its wheel and pinion; where they do not, a size or a count is misprinted, or the depth is out.',
  needs: [],
  uses: toothedFields,
  lists: ['depths'],
  tolerance: {
    allows:
      'half of the last digit printed of every size, or the limits printed; up to 1 % of the module beyond is doubtful',
    why:
      'A size stands for every value that rounds to it, and a module within all of them is enough. One tooth more or less ' +
      'on a wheel of up to 100 teeth shifts its module by 1 % or more, so less is a rounded or measured size. The 1 % is our choice.',
  },
  source:
    'W. L. Goodrich, The Modern Clock, 1905, pp. 201–202, 216–217; C. Dietzschold, Die Turmuhren (year from memory, 1894), pp. 236, 245',
  validity:
    'Outside gearing by pitch diameters, not over the points of the teeth. Depths whose counts are not stated are only held ' +
    'to half of both pitch diameters.',
  reasons: ['module-shared', 'module-near', 'module-differs', 'centres-near', 'centres-differ'],
  judge: (values, { lists }) => {
    const { judged, unstated } = judgeDepths(lists.depths, values)
    const worst = judged.reduce<Judged | undefined>(
      (most, one) => (most === undefined || shareOf(one.pair) > shareOf(most.pair) ? one : most),
      undefined,
    )
    if (worst === undefined) return { outcome: 'cannot-check', missing: unstated.length > 0 ? unstated : ['depths'] }

    const { depth, counts, pair } = worst
    const [stated, found] = [moduleOf(pair.first), moduleOf(pair.second)]
    const outcome = pair.gapMm <= 0 ? 'agrees' : plain(shareOf(pair)) <= doubtfulShare ? 'doubtful' : 'disagrees'
    const [near, far] = counts
      ? (['module-near', 'module-differs'] as const)
      : (['centres-near', 'centres-differ'] as const)
    const difference = plain(found - stated)
    return {
      outcome,
      stated,
      found,
      unit: 'mm',
      difference,
      allowed: plain(Math.abs(found - stated) - pair.gapMm),
      working: judged.flatMap(workingOf),
      reason: outcome === 'agrees' ? 'module-shared' : outcome === 'doubtful' ? near : far,
      details: {
        driver: depth.driver,
        driven: depth.driven,
        first: pair.first.name,
        second: pair.second.name,
        depths: judged.length,
        unchecked: lists.depths.length - judged.length,
        ...(counts && { centreDistanceMm: centreDistance(stated, counts[0].teeth, counts[1].teeth) }),
      },
      fields: fieldsOf(judged),
    }
  },
})
