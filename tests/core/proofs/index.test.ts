import { existsSync } from 'node:fs'
import { expect, it } from 'vitest'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { proofs } from '../../../core/proofs/index.ts'

it('names every proof once, by the file that holds it and its test', () => {
  const ids = proofs.map(({ id }) => id)
  expect(new Set(ids).size).toBe(ids.length)
  for (const id of ids) {
    expect(existsSync(new URL(`../../../core/proofs/${id}.ts`, import.meta.url)), id).toBe(true)
    expect(existsSync(new URL(`./${id}.test.ts`, import.meta.url)), id).toBe(true)
  }
})

it.each(proofs.map((proof) => [proof.id, proof] as const))(
  '%s says what it allows, why, where from and for what',
  (_id, proof) => {
    for (const text of [proof.tolerance.allows, proof.tolerance.why, proof.source, proof.validity])
      expect(text).not.toBe('')
    for (const key of [...proof.needs, ...proof.uses]) expect(caliberFields).toHaveProperty(key)
    expect(proof.needs.filter((key) => proof.uses.includes(key))).toEqual([])
  },
)
