import { workingTerms } from './working-terms.ts'

const words: readonly (readonly [sign: RegExp, word: string])[] = [
  [/(?<=\d) $/, ' and '],
  [/ × /g, ' times '],
  [/ ÷ /g, ' divided by '],
  [/ [−-] /g, ' minus '],
  [/ \+ /g, ' plus '],
  [/ = /g, ' equals '],
  [/²/g, ' squared'],
]

/**
 * A line of working as it is read aloud.
 * @example
 * spokenWorking('80/10 × 75/10 = 60') // '80 over 10 times 75 over 10 equals 60'
 */
export const spokenWorking = (line: string): string =>
  workingTerms(line)
    .map((term) =>
      term.above === undefined
        ? words.reduce((text, [sign, word]) => text.replace(sign, word), term.text)
        : `${term.above} over ${term.below}`,
    )
    .join('')
