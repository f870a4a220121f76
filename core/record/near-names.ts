import { foldHeading } from './fold-heading.ts'
import { isOneEdit } from './one-edit.ts'

/** The names under which a caliber is known. */
export interface CaliberNames {
  readonly maker: string
  readonly designation: string
  readonly alsoKnownAs?: readonly string[]
}

/** Why a name is near another, the surest first. */
export const nearReasons = ['same-name', 'other-maker-spelling', 'other-name', 'one-character'] as const
export type NearReason = (typeof nearReasons)[number]

/** Names shorter than this differ by a character because they are others, not because of a slip. */
const shortest = 4

/**
 * True where two makers may be one: alike but for case, marks and gaps, or a slip apart, or one the other with a word more.
 * @example
 * isNearMaker('Pellorce Frères', 'Pellorce') // true
 * @example
 * isNearMaker('Verrin', 'Verin') // true
 */
export const isNearMaker = (one: string, other: string): boolean => {
  const [first, second] = [foldHeading(one), foldHeading(other)]
  if (first.length < shortest || second.length < shortest) return first === second
  return first.startsWith(second) || second.startsWith(first) || isOneEdit(first, second)
}

const names = ({ designation, alsoKnownAs = [] }: CaliberNames): readonly string[] =>
  [designation, ...alsoKnownAs].map(foldHeading).filter((name) => name !== '')

/**
 * Why one caliber may be another that is spelt differently; undefined where nothing speaks for it.
 * @example
 * nearName({ maker: 'Verrin', designation: '17220' }, { maker: 'Verrin', designation: '17-220' }) // 'same-name'
 * @example
 * nearName({ maker: 'Verrin', designation: '17-220' }, { maker: 'Brandsund', designation: '17-220' }) // undefined
 */
export const nearName = (typed: CaliberNames, other: CaliberNames): NearReason | undefined => {
  const [designation, theirs] = [foldHeading(typed.designation), foldHeading(other.designation)]
  if (designation === '') return undefined
  const sameMaker = foldHeading(typed.maker) === foldHeading(other.maker)
  const nearMaker = isNearMaker(typed.maker, other.maker)
  if (designation === theirs && sameMaker) return 'same-name'
  if (designation === theirs && nearMaker) return 'other-maker-spelling'
  const shared = names(typed).some((name) => names(other).includes(name))
  if (shared && (nearMaker || designation !== theirs)) return 'other-name'
  const long = Math.min(designation.length, theirs.length) >= shortest
  return nearMaker && long && isOneEdit(designation, theirs) ? 'one-character' : undefined
}
