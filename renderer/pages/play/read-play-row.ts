import { judgePlay, type PlayFinding } from '../../../core/bench/judge-play.ts'
import { type PlayPlace, playPlaces } from '../../../core/bench/play-places.ts'
import { type PlayMovement, type PlayStandard, playStandard } from '../../../core/bench/play-standard.ts'
import { sideShakeBetween } from '../../../core/formulas/side-shake.ts'
import type { Measured } from '../../../core/quantities/measured.ts'
import { otherSizeWanted, type PlayName, playNames } from '../../../core/wording/play-sentence.ts'
import { answerOf } from '../../components/typed-figure.ts'
import { type TypedLimits, type TypedMeasured, typedLimits, typedMeasured } from './typed-measured.ts'

/** Millimetres within which a play, and a hole or pivot, can be. */
const possiblePlay = [0, 2] as const
const possibleSize = [0.02, 12] as const

export type PlayCellName = 'hole' | 'pivot' | 'play' | 'maker'

/** The key of a cell among those typed. */
export const cellKey = (place: PlayPlace, name: PlayName, cell: PlayCellName): string => `${place}.${name}.${cell}`

export const cellLabels: Readonly<Record<PlayCellName, string>> = {
  hole: 'Hole',
  pivot: 'Pivot',
  play: 'Play',
  maker: 'Maker’s figure',
}

/** One play as typed and as judged. */
export interface PlayRowRead {
  readonly hole: TypedMeasured
  readonly pivot: TypedMeasured
  readonly play: TypedMeasured
  readonly maker: TypedLimits
  readonly standard: PlayStandard
  /** Measured as such, or hole less pivot. */
  readonly measured: Measured | undefined
  readonly finding: PlayFinding | undefined
  /** Why hole and pivot give no play, or what is still wanted. */
  readonly refused: string
  readonly wanted: string
}

/** Reads the cells of one play and judges it; a hole with its pivot goes before a play typed as such. */
export const readPlayRow = (
  cells: Readonly<Record<string, string>>,
  {
    movement,
    place,
    name,
    offMm,
  }: { movement: PlayMovement; place: PlayPlace; name: PlayName; offMm?: number | undefined },
): PlayRowRead => {
  const measure = name === 'end' ? 'end' : 'side'
  const asked = (cell: PlayCellName) => ({
    label: `${playPlaces[place].label}, ${playNames[name].toLowerCase()}${cell === 'play' ? '' : `, ${cellLabels[cell].toLowerCase()}`}`,
    kind: 'length' as const,
    possible: cell === 'hole' || cell === 'pivot' ? possibleSize : possiblePlay,
  })
  const textOf = (cell: PlayCellName) => cells[cellKey(place, name, cell)] ?? ''
  const typed = (cell: PlayCellName) => typedMeasured(asked(cell), textOf(cell), offMm)
  const hole = typed('hole')
  const pivot = typed('pivot')
  const play = typed('play')
  const maker = typedLimits(asked('maker'), textOf('maker'))

  const sizes =
    hole.measured !== undefined && pivot.measured !== undefined
      ? { hole: hole.measured, pivot: pivot.measured }
      : undefined
  const answer = sizes && answerOf(() => sideShakeBetween(sizes.hole, sizes.pivot))
  const found = answer === undefined ? play.measured : 'found' in answer ? answer.found : undefined
  const limits = { maker: maker.limits, pivotMm: pivot.measured?.value }
  const one = (hole.value === undefined) !== (pivot.value === undefined) && hole.problem === '' && pivot.problem === ''
  return {
    hole,
    pivot,
    play,
    maker,
    standard: playStandard(movement, place, measure, limits),
    measured: found,
    finding: found && judgePlay({ movement, place, measure, measured: found, ...limits }),
    refused: answer !== undefined && 'refused' in answer ? answer.refused : '',
    wanted: one && play.text === '' ? otherSizeWanted[hole.value === undefined ? 'hole' : 'pivot'] : '',
  }
}
