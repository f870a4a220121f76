import { expect, it } from 'vitest'
import type { Proof } from '../../core/proofs/proof.ts'
import type { CaliberValues, JewelGroup } from '../../core/record/caliber.ts'
import { caliberOf, without } from './caliber-of.ts'

/** From a caliber that agrees, takes away each of these fields in turn: the proof must name exactly that one. */
export const everyNeedIsNamed = (
  proof: Proof,
  values: CaliberValues,
  keys: readonly (keyof CaliberValues)[],
  jewels: readonly JewelGroup[] = [],
) =>
  it.each(keys)('cannot be checked without %s, and says so', (key) => {
    expect(proof.judge(caliberOf(values, jewels)).outcome).toBe('agrees')
    expect(proof.judge(caliberOf(without(values, key), jewels))).toEqual({ outcome: 'cannot-check', missing: [key] })
  })
