import type { Limits } from '../../core/bench/against-limits.ts'
import type { Measured } from '../../core/quantities/measured.ts'

/** What a strip is drawn from: limits and reading in one unit, and the figure at its right end. */
export interface StripAsked {
  readonly limits: Limits | null
  readonly reading: Measured | null
  readonly span: number
  readonly step: number
}

export interface StripLayout {
  /** The stretch that is sound; open where there is no greatest figure. */
  readonly band: { readonly from: number; readonly to: number; readonly open: boolean } | null
  /** The reading, from and to what it may be; past where it lies beyond the strip. */
  readonly mark: { readonly at: number; readonly from: number; readonly to: number; readonly past: boolean } | null
  readonly ticks: readonly number[]
}

/** Drawing units across the strip, and the margin at either end. */
export const stripWidth = 240
export const stripMargin = 8

/** Where limits, reading and ticks of a gauge strip stand, to scale from nothing at the left end. */
export const gaugeStripLayout = ({ limits, reading, span, step }: StripAsked): StripLayout => {
  const across = stripWidth - 2 * stripMargin
  const place = (figure: number) =>
    Math.round((stripMargin + (Math.min(Math.max(figure, 0), span) / span) * across) * 100) / 100
  return {
    band:
      limits === null ? null : { from: place(limits.low), to: place(limits.high), open: !Number.isFinite(limits.high) },
    mark:
      reading === null
        ? null
        : {
            at: place(reading.value),
            from: place(reading.low),
            to: place(reading.high),
            past: reading.value > span,
          },
    ticks: Array.from({ length: Math.round(span / step) + 1 }, (_, index) => place(index * step)),
  }
}
