/** The ids of the proofs that speak of barrel and mainspring, in the order in which they are shown. */
export const springProofs: readonly string[] = [
  'spring-fills-barrel',
  'spring-length-follows-barrel',
  'spring-stands-within-barrel',
  'spring-bends-round-arbor',
  'going-hours-follow-spring',
]
