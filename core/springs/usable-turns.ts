/** How many of the theoretical turns can be used, and what bounds them. */
export interface UsableTurns {
  readonly turns: number
  /** Stop work fixes them; otherwise they are fewer than the figure, which is an upper bound. */
  readonly boundBy: 'stop-work' | 'slipping-bridle' | 'end-coils'
}

/**
 * What is left of the theoretical turns: those of the stop work where they are fewer, otherwise an upper bound with what
 * takes from it.
 * @example
 * usableTurns(7.9, { stopWorkTurns: 4 }) // { turns: 4, boundBy: 'stop-work' }
 */
export const usableTurns = (
  theoretical: number,
  {
    stopWorkTurns,
    springEnd,
  }: { readonly stopWorkTurns?: number | undefined; readonly springEnd?: string | undefined },
): UsableTurns =>
  stopWorkTurns !== undefined && stopWorkTurns <= theoretical
    ? { turns: stopWorkTurns, boundBy: 'stop-work' }
    : { turns: theoretical, boundBy: springEnd === 'slipping-bridle' ? 'slipping-bridle' : 'end-coils' }
