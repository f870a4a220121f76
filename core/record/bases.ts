import type { Caliber } from './caliber.ts'
import { inheritFrom } from './inherit.ts'

/** Most names: nothing in them is to be taken apart. */
const ascii = /^[\x20-\x7e]*$/

/**
 * A name as it is looked up: capitals, accents and the width of gaps do not count; points and strokes do.
 * @example
 * foldName(' Sarelle  17-É ') // 'sarelle 17-e'
 */
export const foldName = (name: string): string =>
  (ascii.test(name) ? name : name.normalize('NFKD').replace(/\p{M}/gu, '')).toLowerCase().trim().replace(/\s+/g, ' ')

/** The names by which a variant may call a caliber: its designation first, then its other names. */
export const namesOfBase = ({ values: { designation, alsoKnownAs = [] } }: Caliber): readonly string[] =>
  [...(designation === undefined ? [] : [designation]), ...alsoKnownAs].map(foldName)

/** Of calibers so named, the one that a variant means: of its own maker rather than another, by designation rather than another name. */
export const chooseBase = ({ values }: Caliber, named: readonly Caliber[]): Caliber | undefined => {
  const wanted = foldName(values.basedOn ?? '')
  const maker = foldName(values.maker ?? '')
  const rank = (other: Caliber): number =>
    (foldName(other.values.maker ?? '') === maker ? 0 : 2) +
    (foldName(other.values.designation ?? '') === wanted ? 0 : 1)
  return named.reduce<Caliber | undefined>(
    (best, other) => (best === undefined || rank(other) < rank(best) ? other : best),
    undefined,
  )
}

/** Each caliber over the bases that are among them. A chain that runs back into itself ends where it would begin again. */
export const withBases = (calibers: readonly Caliber[]): readonly Caliber[] => {
  const byName = new Map<string, Caliber[]>()
  for (const caliber of calibers) {
    for (const name of new Set(namesOfBase(caliber))) {
      const named = byName.get(name)
      if (named) named.push(caliber)
      else byName.set(name, [caliber])
    }
  }
  return calibers.map((caliber) => {
    const line = [caliber]
    for (let last: Caliber | undefined = caliber; last?.values.basedOn !== undefined; ) {
      const variant: Caliber = last
      const named = byName.get(foldName(variant.values.basedOn ?? '')) ?? []
      last = chooseBase(
        variant,
        named.filter((other) => !line.includes(other)),
      )
      if (last) line.push(last)
    }
    return inheritFrom(caliber, line.slice(1))
  })
}
