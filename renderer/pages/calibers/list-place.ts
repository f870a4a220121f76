/** Where the list stood, so that coming back from a caliber finds it as it was left; `back` is the page one came from. */
export const listPlace: { words: string; at: number; find: boolean; back: '/' | '/proofs' } = {
  words: '',
  at: 0,
  find: false,
  back: '/',
}
