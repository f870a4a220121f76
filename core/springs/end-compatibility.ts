import type { CaliberValues } from '../record/caliber.ts'

export type SpringEnd = NonNullable<CaliberValues['springEnd']>

/**
 * What each end needs in the barrel. Sources: W. L. Goodrich, The Modern Clock, 1905, pp. 279–280 (hole, hole with
 * brace: a stud in the wall); H. Jendritzki, Die Zugfeder, 1950, part 11, extract (double brace: holes in floor and lid);
 * the rest is common practice.
 */
const hookings = {
  hole: 'stud',
  'hole-with-brace': 'stud',
  swivel: 'stud',
  tongue: 'recess',
  'double-brace': 'floor-and-lid',
  't-end': 'slots',
  'slipping-bridle': 'bare-wall',
  loop: 'pillar',
  other: null,
} as const satisfies Record<SpringEnd, string | null>

/** How the end of one spring holds where another was meant. */
export type EndMatch = 'same' | 'alike' | 'no-hold' | 'not-known'

/**
 * Whether a spring holds in a barrel made for another end: `alike` where both hook on the same thing in the barrel,
 * `no-hold` where the barrel would have to be altered.
 * @example
 * endMatch('hole', 'hole-with-brace') // 'alike'
 * @example
 * endMatch('hole', 'slipping-bridle') // 'no-hold'
 */
export const endMatch = (end: SpringEnd | undefined, specified: SpringEnd | undefined): EndMatch => {
  if (end === undefined || specified === undefined || hookings[end] === null || hookings[specified] === null) {
    return 'not-known'
  }
  if (end === specified) return 'same'
  return hookings[end] === hookings[specified] ? 'alike' : 'no-hold'
}
