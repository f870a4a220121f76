import { existsSync, readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { caliberFields } from '../../core/fields/caliber-fields.ts'
import { proofs } from '../../core/proofs/index.ts'
import { springProofs } from '../../core/proofs/spring-proofs.ts'
import { findingSentences } from '../../core/wording/finding-sentence.ts'
import { projectFolder, readSource } from '../support/source-files.ts'

const definitions = readdirSync(`${projectFolder}core/proofs`).filter(
  (name) => name !== 'define-proof.ts' && /\bdefineProof\s*[(<]/.test(readSource(`core/proofs/${name}`)),
)

test('every proof stands in the file that its id names, and every such file in the list', () => {
  expect(definitions.toSorted()).toEqual(proofs.map((proof) => `${proof.id}.ts`).toSorted())
})

test('no id is used twice', () => {
  expect(new Set(proofs.map((proof) => proof.id)).size).toBe(proofs.length)
})

test.each(proofs.map((proof) => [proof.id, proof] as const))('%s has its test and states its grounds', (id, proof) => {
  expect(existsSync(`${projectFolder}tests/core/proofs/${id}.test.ts`)).toBe(true)
  for (const said of [proof.title, proof.source, proof.validity, proof.tolerance.allows, proof.tolerance.why]) {
    expect(said.trim()).not.toBe('')
  }
})

test.each(proofs.map((proof) => [proof.id, proof] as const))('%s has its line in the glossary', (_id, proof) => {
  expect(proof.meaning).toMatch(/^[A-Z].*[a-z]\.$/)
  expect(proofs.filter(({ meaning }) => meaning === proof.meaning)).toEqual([proof])
})

test.each(proofs.map((proof) => [proof.id, proof] as const))('%s has a sentence for every reason', (_id, proof) => {
  expect(proof.reasons.length).toBeGreaterThan(0)
  expect(proof.reasons.filter((reason) => !Object.hasOwn(findingSentences, reason))).toEqual([])
})

test('the proofs of barrel and mainspring are those that need a figure of theirs', () => {
  const ofSpring = proofs.filter(({ needs }) =>
    needs.some((key) => caliberFields[key].group === 'barrel' && caliberFields[key].kind !== 'text'),
  )
  expect(springProofs.toSorted()).toEqual(ofSpring.map(({ id }) => id).toSorted())
})
