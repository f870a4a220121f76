import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { ListKey } from '../fields/list-fields.ts'
import type { DeclaredValues, Proof, ProofDefinition } from './proof.ts'

/**
 * Makes a proof from its definition. The judge is called only when every need is stated, nothing is missing
 * besides, and every list it declares has a line; otherwise the runner answers 'cannot-check' and names what is missing.
 */
export const defineProof = <const N extends CaliberFieldKey, const U extends CaliberFieldKey, const R extends string>(
  definition: ProofDefinition<N, U, R>,
): Proof => {
  const { judge, missingBesides, ...rest } = definition
  const { needs, lists } = definition
  return {
    ...rest,
    judge: (caliber) => {
      const missing: (CaliberFieldKey | ListKey)[] = []
      for (const key of needs) if (caliber.values[key] === undefined) missing.push(key)
      if (missingBesides !== undefined) missing.push(...missingBesides(caliber.values))
      for (const key of lists) if (caliber.lists[key].length === 0) missing.push(key)
      if (missing.length > 0) return { outcome: 'cannot-check', missing }
      // Every need was just seen to be there, which the compiler cannot follow through a loop.
      return judge(caliber.values as DeclaredValues<N, U>, caliber)
    },
  }
}
