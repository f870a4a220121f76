/** Where the list stood, so that coming back from a caliber finds it as it was left. */
export const listPlace = { words: '', at: 0, find: false }
