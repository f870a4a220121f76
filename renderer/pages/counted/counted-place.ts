/** What was typed on the page of counts: teeth by field, and what was observed. */
export interface CountedTyped {
  readonly counts: Readonly<Record<string, string>>
  readonly beatRate: string
  readonly gain: string
  readonly secondsHand: '' | 'true' | 'strays'
}

export const nothingCounted: CountedTyped = { counts: {}, beatRate: '', gain: '', secondsHand: '' }

/** What was typed for each caliber, kept while the page is open. */
export const countedPlace = new Map<number, CountedTyped>()
