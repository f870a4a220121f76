/** How a value may have come to be printed or copied wrongly. */
export type Slip =
  | 'digits-exchanged'
  | 'fraction-misread'
  | 'digit-misread'
  | 'digit-doubled'
  | 'decimal-shifted'
  | 'neighbour'
  | 'other-digit'

/** What may have been meant where something else stands. */
export interface Misreading {
  readonly printed: string
  readonly slip: Slip
}

/** The digits that a worn print or a hasty hand makes alike; common practice, from memory. */
const alike: Readonly<Record<string, string>> = {
  0: '689',
  1: '74',
  2: '7',
  3: '85',
  4: '91',
  5: '63',
  6: '058',
  7: '12',
  8: '3069',
  9: '408',
}
const digits = '0123456789'
const vulgar = ['¼', '½', '¾', '⅛', '⅜', '⅝', '⅞'] as const
const written = ['1/4', '1/2', '3/4'] as const

const spliced = (text: string, from: number, to: number, by: string): string =>
  text.slice(0, from) + by + text.slice(to)

const fractions = (text: string): Misreading[] => {
  const found: Misreading[] = []
  const offer = (others: readonly string[], at: number, length: number) => {
    for (const other of others) found.push({ printed: spliced(text, at, at + length, other), slip: 'fraction-misread' })
  }
  const sign = /[¼½¾⅛⅜⅝⅞]/.exec(text)
  if (sign) offer(vulgar, sign.index, 1)
  const spelt = /(?<!\d)(?:1\/4|1\/2|3\/4)(?!\d)/.exec(text)
  if (spelt) offer(written, spelt.index, 3)
  return found
}

const placesOfDigits = (text: string): number[] =>
  [...text].flatMap((letter, at) => (letter >= '0' && letter <= '9' ? [at] : []))

const exchanged = (text: string, places: readonly number[]): Misreading[] =>
  places.slice(1).flatMap((place, i) => {
    const before = places[i] ?? 0
    const one = text.charAt(before)
    const other = text.charAt(place)
    if (one === other) return []
    return [
      { printed: spliced(spliced(text, before, before + 1, other), place, place + 1, one), slip: 'digits-exchanged' },
    ]
  })

const misread = (text: string, places: readonly number[]): Misreading[] =>
  places.flatMap((place) => {
    const there = text.charAt(place)
    return [...digits]
      .filter((digit) => digit !== there)
      .map((digit) => ({
        printed: spliced(text, place, place + 1, digit),
        slip: alike[there]?.includes(digit) ? ('digit-misread' as const) : ('other-digit' as const),
      }))
  })

const doubled = (text: string, places: readonly number[]): Misreading[] =>
  places.flatMap((place) => [
    { printed: spliced(text, place, place, text.charAt(place)), slip: 'digit-doubled' as const },
    ...(places.length > 1 ? [{ printed: spliced(text, place, place + 1, ''), slip: 'digit-doubled' as const }] : []),
  ])

/** The decimal mark one place to either side, where the text holds a single plain figure. */
const shifted = (text: string): Misreading[] => {
  const figure = /^(\D*?)(\d*)(?:([.,])(\d+))?(\D*)$/.exec(text)
  if (!figure) return []
  const [, before = '', whole = '', mark = '.', decimals = '', after = ''] = figure
  const right = `${whole}${decimals.slice(0, 1) || '0'}${decimals.length > 1 ? mark + decimals.slice(1) : ''}`
  const left = `${whole.slice(0, -1) || '0'}${mark}${whole.slice(-1) || '0'}${decimals}`
  return [right.replace(/^0+(?=\d)/, ''), left].map((moved) => ({
    printed: before + moved + after,
    slip: 'decimal-shifted',
  }))
}

/**
 * The other prints for which this one may have been put by a slip of the press or the pen, the likeliest kinds first.
 * @example
 * misreadings('57')[0] // { printed: '75', slip: 'digits-exchanged' }
 */
export const misreadings = (printed: string): readonly Misreading[] => {
  const places = placesOfDigits(printed)
  return [
    ...exchanged(printed, places),
    ...fractions(printed),
    ...misread(printed, places),
    ...doubled(printed, places),
    ...shifted(printed),
  ]
}
