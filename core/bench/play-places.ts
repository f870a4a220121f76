import type { Limits } from './against-limits.ts'

/** What a book prints for the play of a place: limits, or words without a figure. */
export type PrintedPlay = Limits | 'just-free' | 'merely-free'

export interface PlayPlaceDef {
  readonly label: string
  /** Found in fine watches, in mm; left out where nothing was to be had in print. */
  readonly end?: PrintedPlay
  readonly side?: PrintedPlay
}

/** Where the play found in fine watches stands in print. */
export const finePlaySource = 'W. J. Kleinlein, Rules and Practice for Adjusting Watches, 1920, p. 35'

const trainPlay = { end: { low: 0.03, high: 0.05 }, side: { low: 0.015, high: 0.02 } }
const escapementPlay = { end: { low: 0.02, high: 0.03 }, side: { low: 0.0075, high: 0.0125 } }

/**
 * The arbors whose play is tried, in the order of taking down: balance first, each before it is lifted out.
 * @source W. J. Kleinlein, Rules and Practice for Adjusting Watches, 1920, pp. 34–36.
 */
export const playPlaces = {
  balance: { label: 'Balance', ...escapementPlay },
  lever: { label: 'Lever', ...escapementPlay },
  escape: { label: 'Escape wheel', ...escapementPlay },
  sweep: { label: 'Sweep seconds pinion' },
  fifth: { label: 'Fifth wheel' },
  fourth: { label: 'Fourth wheel', ...trainPlay },
  third: { label: 'Third wheel', ...trainPlay },
  centre: { label: 'Centre wheel', ...trainPlay },
  intermediate: { label: 'Intermediate wheel' },
  barrel: { label: 'Barrel on its still arbor', end: { low: 0.03, high: 0.05 }, side: 'just-free' },
  barrelArbor: { label: 'Barrel arbor in the plates', end: 'merely-free', side: 'merely-free' },
} as const satisfies Record<string, PlayPlaceDef>

export type PlayPlace = keyof typeof playPlaces

/** The keys of the places, in the order of taking down. */
export const playPlaceKeys = Object.keys(playPlaces) as readonly PlayPlace[]
