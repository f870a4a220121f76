/**
 * Sentences of ours joined to one, for a place that has room for one; figures and labels alone may stand in them.
 * @example
 * oneSentence('The arbor leaves no room. Measure it again.') // 'The arbor leaves no room; measure it again.'
 */
export const oneSentence = (text: string): string =>
  text.replace(/[.] (\p{Lu})/gu, (_, letter: string) => `; ${letter.toLowerCase()}`)
