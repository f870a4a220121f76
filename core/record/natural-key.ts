import { foldName } from './bases.ts'

/** Digits that say how long a row of digits is: of two numbers, the longer is the larger. */
const lengthDigits = 3

/**
 * A key by which texts fall in the order in which a person looks for them: numbers in them by their size, capitals and
 * accents left aside. No two texts have the same key, so that the order is the same each time.
 * @example
 * naturalKey('2b') < naturalKey('10a') // true
 * @example
 * ['A 10', 'a 9', 'Ä 9b'].sort((one, other) => (naturalKey(one) < naturalKey(other) ? -1 : 1)) // ['a 9', 'Ä 9b', 'A 10']
 */
export const naturalKey = (text: string): string => {
  const key = foldName(text).replace(
    /0*(\d+)/g,
    (_, figures: string) => `${String(figures.length).padStart(lengthDigits, '0')}${figures}`,
  )
  return `${key}\u0000${text}`
}
