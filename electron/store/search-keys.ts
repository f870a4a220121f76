const unmarked: Readonly<Record<string, string>> = {
  ß: 'ss',
  ø: 'o',
  ł: 'l',
  æ: 'ae',
  œ: 'oe',
  đ: 'd',
  ð: 'd',
  þ: 'th',
}

const ascii = /^[\x20-\x7e]*$/

/** Letters without case or marks: `Größe` and `grosse` are one word to a search. */
export const plain = (text: string): string =>
  ascii.test(text)
    ? text.toLowerCase()
    : text
        .normalize('NFKD')
        .toLowerCase()
        .normalize('NFKD')
        .replace(/\p{M}/gu, '')
        .replace(/[ßøłæœđðþ]/g, (letter) => unmarked[letter] ?? letter)

/** The words of a text, folded; whatever is neither letter nor digit parts them. */
export const wordsOf = (text: string): string[] => plain(text).match(/[\p{L}\p{N}]+/gu) ?? []

/** A text as its folded words with single spaces: what makers are looked up by. */
export const folded = (text: string): string => wordsOf(text).join(' ')

/** A designation without anything between its letters and digits: `17-220`, `17 220` and `17220` are one to a search. */
export const compact = (text: string): string => wordsOf(text).join('')

/** A name as it may stand only once: case, marks and the width of gaps do not count, points and strokes do. */
export const nameKey = (text: string): string => plain(text).trim().replace(/\s+/g, ' ')

/** A designation so that 17-5 sorts before 17-220. */
export const orderKey = (text: string): string => folded(text).replace(/\d+/g, (digits) => digits.padStart(8, '0'))

/** The first text after every text that begins with `prefix`. */
export const after = (prefix: string): string => `${prefix}\u{10ffff}`
