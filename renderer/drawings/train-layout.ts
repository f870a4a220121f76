import type { GoingTrain } from '../../core/formulas/going-train.ts'

type ArborName = GoingTrain['arbors'][number]['arbor']

/** A toothed circle by its pitch radius; `teeth` null where the count is not stated and the size is a guess. */
export interface PitchCircle {
  readonly radius: number
  readonly teeth: number | null
}

export interface PlacedArbor {
  readonly arbor: ArborName
  readonly x: number
  readonly y: number
  readonly wheel: PitchCircle | null
  readonly pinion: PitchCircle | null
  /** The second wheel of the third arbor, where it drives a sweep seconds pinion. */
  readonly sweepDriver: PitchCircle | null
  /** Middle of the label's foot or head, by `row`. */
  readonly label: { readonly x: number; readonly y: number; readonly row: 'above' | 'below' }
}

export interface TrainLayout {
  readonly arbors: readonly PlacedArbor[]
  readonly width: number
  readonly height: number
}

/** Sizes on the drawing, in its own units. */
export const labelWidth = 132
export const labelHeight = 50
const labelGap = 16
const width = 720
const margin = 8

/** Each mesh is finer than the one before, as it is in a watch. */
const finer = 0.86
/** Angle of the line from arbor to arbor, down and up in turn. */
const slope = (26 * Math.PI) / 180
/** What an unstated count is drawn as. */
const guessed = { wheel: 70, pinion: 10 }
/** An escape wheel meshes with no pinion: its few teeth stand wide apart. */
const escapePitch = 2.2

const circle = (count: number | undefined, guess: number, module: number): PitchCircle => ({
  radius: (module * (count ?? guess)) / 2,
  teeth: count ?? null,
})

/** Moves labels of one row apart, and back within the drawing, keeping their order. */
const spread = (wanted: readonly number[], total: number): number[] => {
  const placed = [...wanted]
  const half = labelWidth / 2
  for (let index = 0; index < placed.length; index++) {
    const least = index === 0 ? half : (placed[index - 1] ?? 0) + labelWidth
    placed[index] = Math.max(placed[index] ?? 0, least)
  }
  for (let index = placed.length - 1; index >= 0; index--) {
    const most = index === placed.length - 1 ? total - half : (placed[index + 1] ?? total) - labelWidth
    placed[index] = Math.min(placed[index] ?? 0, most)
  }
  return placed
}

/**
 * Places the train in plan, from the barrel on, each wheel touching the pinion that it drives at their pitch circles.
 * Sizes follow the counts by one module a mesh. The sweep seconds arbor stands on the centre, where its hand is.
 */
export const layTrain = (train: GoingTrain): TrainLayout => {
  const chain = train.arbors.filter(({ arbor }) => arbor !== 'sweep')
  const sweep = train.arbors.find(({ arbor }) => arbor === 'sweep')
  const modules = chain.map((_, index) => finer ** index)

  const raw = chain.map(({ arbor, wheel, pinion }, index) => {
    const module = modules[index] ?? 1
    return {
      arbor,
      wheel: circle(wheel, guessed.wheel, arbor === 'escape' ? module * escapePitch : module),
      pinion: index === 0 ? null : circle(pinion, guessed.pinion, modules[index - 1] ?? 1),
      x: 0,
      y: 0,
    }
  })
  for (const [index, here] of raw.entries()) {
    const before = raw[index - 1]
    if (!before) continue
    const apart = before.wheel.radius + (here.pinion?.radius ?? 0)
    here.x = before.x + apart * Math.cos(slope)
    here.y = before.y + apart * Math.sin(slope) * (index % 2 === 1 ? -1 : 1)
  }

  const left = Math.min(...raw.map(({ x, wheel }) => x - wheel.radius))
  const right = Math.max(...raw.map(({ x, wheel }) => x + wheel.radius))
  const top = Math.min(...raw.map(({ y, wheel }) => y - wheel.radius))
  const bottom = Math.max(...raw.map(({ y, wheel }) => y + wheel.radius))
  const scale = (width - 2 * margin) / (right - left)
  const head = labelHeight + labelGap
  const grown = (one: PitchCircle): PitchCircle => ({ ...one, radius: one.radius * scale })
  const height = (bottom - top) * scale + 2 * head

  const placed = raw.map((one, index) => ({
    arbor: one.arbor as ArborName,
    x: margin + (one.x - left) * scale,
    y: head + (one.y - top) * scale,
    wheel: grown(one.wheel) as PitchCircle | null,
    pinion: one.pinion && grown(one.pinion),
    sweepDriver: null as PitchCircle | null,
    row: (index % 2 === 1 ? 'above' : 'below') as 'above' | 'below',
  }))

  const centre = placed.find(({ arbor }) => arbor === 'centre')
  const third = placed.find(({ arbor }) => arbor === 'third')
  if (sweep && centre && third) {
    const driverTeeth = train.meshes.find(({ driven }) => driven === 'sweep')?.wheel
    const apart = Math.hypot(centre.x - third.x, centre.y - third.y)
    const teeth = { driver: driverTeeth ?? guessed.wheel, pinion: sweep.pinion ?? guessed.pinion }
    const module = (2 * apart) / (teeth.driver + teeth.pinion)
    third.sweepDriver = circle(driverTeeth, guessed.wheel, module)
    placed.push({
      arbor: 'sweep',
      x: centre.x,
      y: centre.y,
      wheel: null,
      pinion: circle(sweep.pinion, guessed.pinion, module),
      sweepDriver: null,
      row: centre.row === 'above' ? 'below' : 'above',
    })
  }

  const labelX = new Map<ArborName, number>()
  for (const row of ['above', 'below'] as const) {
    const inRow = placed.filter((one) => one.row === row).sort((one, other) => one.x - other.x)
    const places = spread(
      inRow.map(({ x }) => x),
      width,
    )
    for (const [index, { arbor, x }] of inRow.entries()) labelX.set(arbor, places[index] ?? x)
  }
  return {
    width,
    height,
    arbors: placed.map(({ row, ...one }) => ({
      ...one,
      label: { x: labelX.get(one.arbor) ?? one.x, y: row === 'above' ? labelHeight : height - labelHeight, row },
    })),
  }
}
