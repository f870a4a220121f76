/** Share of the free space with which a spring gives the most turns. */
export const bestFill = 0.5

/** How far the share may lie from the best: first agreed to, then borne. Our choice; the proofs of the spring say why. */
export const fillAllowance = { usual: 0.1, borne: 0.17 } as const

/**
 * What a share of the free space is worth, with which a length stands or falls as well: it is that share that makes it best.
 * @example
 * fillVerdict(0.62) // 'doubtful'
 */
export const fillVerdict = (fill: number): 'agrees' | 'doubtful' | 'disagrees' => {
  const off = Math.abs(fill - bestFill)
  return off <= fillAllowance.usual ? 'agrees' : off <= fillAllowance.borne ? 'doubtful' : 'disagrees'
}
