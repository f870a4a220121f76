/**
 * Words in a row, as a sentence lists them.
 * @example
 * listed(['cannon pinion', 'minute wheel', 'hour wheel']) // 'cannon pinion, minute wheel and hour wheel'
 */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
