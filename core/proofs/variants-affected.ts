import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { ListKey } from '../fields/list-fields.ts'
import { foldName, namesOfBase } from '../record/bases.ts'
import type { Caliber } from '../record/caliber.ts'
import { inheritFrom } from '../record/inherit.ts'
import { sameJson } from '../record/same-json.ts'
import type { Outcome } from './proof.ts'
import { proveCaliber } from './prove.ts'

/** A caliber based on the one that is changed; `line` is what it says itself, then what its bases up to that one say. */
export interface VariantInLine {
  readonly line: readonly [Caliber, ...Caliber[]]
}

/** What a change of a base does to the calibers based on it. */
export interface VariantsAffected<V extends VariantInLine> {
  /** Variants that name the base as it is no longer called. */
  readonly lost: readonly V[]
  /** Fields and lists that are changed in variants too, since these do not state them. */
  readonly inherited: readonly { readonly key: CaliberFieldKey | ListKey; readonly variants: readonly V[] }[]
  /** Proofs of variants that say something else. */
  readonly turned: readonly { readonly variant: V; readonly proof: string; readonly to: Turn }[]
}

/** An outcome to which a proof turns that is worth saying. */
export type Turn = Extract<Outcome, 'agrees' | 'disagrees' | 'doubtful'>

const outcomesOf = (caliber: Caliber): ReadonlyMap<string, Outcome> =>
  new Map(proveCaliber(caliber).map(({ proof, judgement }) => [proof.id, judgement.outcome]))

const failed = (outcome: Outcome | undefined): boolean => outcome === 'disagrees' || outcome === 'doubtful'

/** Fields and lists of a variant that another base changes. */
const changedIn = (before: Caliber, after: Caliber): readonly (CaliberFieldKey | ListKey)[] => {
  const fields = new Set([...(before.inheritedKeys ?? []), ...(after.inheritedKeys ?? [])])
  return [
    ...[...fields].filter((key) => !sameJson(before.values[key], after.values[key])),
    ...(Object.keys(before.lists) as ListKey[]).filter((list) => !sameJson(before.lists[list], after.lists[list])),
  ]
}

/**
 * What else changes with a base: the fields that its variants have from it, and their proofs that would turn. Both
 * calibers are taken over their own bases.
 */
export const variantsAffected = <V extends VariantInLine>(
  before: Caliber,
  after: Caliber,
  variants: readonly V[],
): VariantsAffected<V> => {
  const names = namesOfBase(after)
  const follows = ({ line }: V) => names.includes(foldName(line.at(-1)?.values.basedOn ?? ''))
  const inherited = new Map<CaliberFieldKey | ListKey, V[]>()
  const turned: { variant: V; proof: string; to: Turn }[] = []
  for (const variant of variants.filter(follows)) {
    const [own, ...between] = variant.line
    const was = inheritFrom(own, [...between, before])
    const would = inheritFrom(own, [...between, after])
    for (const key of changedIn(was, would)) inherited.set(key, [...(inherited.get(key) ?? []), variant])
    const outcomes = outcomesOf(was)
    for (const [proof, to] of outcomesOf(would)) {
      const from = outcomes.get(proof)
      if (to === from) continue
      if (to === 'disagrees' || to === 'doubtful' || (to === 'agrees' && failed(from)))
        turned.push({ variant, proof, to })
    }
  }
  return {
    lost: variants.filter((variant) => !follows(variant)),
    inherited: [...inherited].map(([key, having]) => ({ key, variants: having })),
    turned,
  }
}
