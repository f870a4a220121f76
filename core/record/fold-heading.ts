/** Letters that no decomposition turns into plain ones. */
const letters: Readonly<Record<string, string>> = { ß: 'ss', œ: 'oe', æ: 'ae', ø: 'o', ij: 'ij' }

/**
 * Folds a heading to what distinguishes it: lower case, no accents, no spaces, no punctuation.
 *
 * @example
 * foldHeading("Diamètre d'encageage") // 'diametredencageage'
 * @example
 * foldHeading('Stoßsicherung') // 'stosssicherung'
 */
export const foldHeading = (text: string): string =>
  text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[ßœæøij]/g, (letter) => letters[letter] ?? letter)
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]/gu, '')
