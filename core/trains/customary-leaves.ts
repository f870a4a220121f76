/** The leaves that the trade cuts most; common practice, from memory. */
export const customaryLeaves: readonly number[] = [6, 7, 8, 10, 12, 14]
