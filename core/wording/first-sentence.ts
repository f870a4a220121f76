/**
 * What is found, without the advice that follows it.
 * @example
 * firstSentence('It is 0.5 mm off. Measure again.') // 'It is 0.5 mm off.'
 */
export const firstSentence = (text: string): string => /^.*?[.!?](?=\s+\p{Lu}|$)/su.exec(text)?.[0] ?? text
