import type { LeverFreedom, ToothForm } from '../../../core/bench/lever-freedoms.ts'
import type { PlayMovement } from '../../../core/bench/play-standard.ts'

/** What was typed on the page of play. */
export interface PlayTyped {
  /** Empty while the caliber tells it. */
  readonly movement: PlayMovement | ''
  readonly offMm: string
  /** Whether the maker's figures are asked for. */
  readonly makers: boolean
  /** By place, play and cell: `third.upper.hole`. */
  readonly cells: Readonly<Record<string, string>>
  readonly cylinderMm: string
  readonly tooth: ToothForm
  readonly offDeg: string
  readonly wheelMm: string
  readonly forkMm: string
  readonly freedoms: Readonly<Partial<Record<LeverFreedom, string>>>
}

export const nothingTyped: PlayTyped = {
  movement: '',
  offMm: '',
  makers: false,
  cells: {},
  cylinderMm: '',
  tooth: 'club',
  offDeg: '',
  wheelMm: '',
  forkMm: '',
  freedoms: {},
}

/** What was typed for each caliber, or for none, kept while the page is open. */
export const playPlace = new Map<number | undefined, PlayTyped>()
