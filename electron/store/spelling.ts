/**
 * Words within a slip or two of what was typed, by symmetric deletion: two words differ by at most n edits only if both can
 * be brought to the same letters by leaving out at most n. The letters so left are kept in a table, so a look-up is a few
 * exact ones. To keep that table small, only the first `lead` letters of a word take part.
 */
const lead = 7

/** Slips allowed in a word: one, or two in a long one, where two slips still leave most of it. */
export const slipsIn = (word: string): number => (word.length >= 8 ? 2 : word.length >= 4 ? 1 : 0)

/** Whether a word is spelt rather than numbered, and long enough to be recognised with a slip in it. */
export const isSpelt = (word: string): boolean => word.length >= 4 && word.length <= 40 && /^\p{L}+$/u.test(word)

/** What is left of a word's first letters after leaving out up to as many as it may have slips; the word itself first. */
export const deletionsOf = (word: string): string[] => {
  const found = new Set([word, word.slice(0, lead)])
  let latest = [word.slice(0, lead)]
  // A word of seven letters may stand for one of eight with two slips in it.
  const depth = Math.max(1, word.length >= 6 ? 2 : slipsIn(word))
  for (let left = depth; left > 0; left -= 1) {
    latest = latest.flatMap((text) => Array.from(text, (_, at) => text.slice(0, at) + text.slice(at + 1)))
    for (const text of latest) found.add(text)
  }
  return [...found]
}

/** Edits that turn one word into the other: a letter left out, put in, changed, or two neighbours exchanged. */
export const editsBetween = (a: string, b: string): number => {
  let before: number[] = []
  let last = Array.from({ length: b.length + 1 }, (_, at) => at)
  for (let i = 1; i <= a.length; i += 1) {
    const line = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const changed = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      let fewest = Math.min((last[j] ?? 0) + 1, (line[j - 1] ?? 0) + 1, changed)
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) fewest = Math.min(fewest, (before[j - 2] ?? 0) + 1)
      line.push(fewest)
    }
    before = last
    last = line
  }
  return last[b.length] ?? 0
}
