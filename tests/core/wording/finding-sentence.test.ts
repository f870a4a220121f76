import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { findingSentence } from '../../../core/wording/finding-sentence.ts'

const folder = new URL('../../../core/proofs/', import.meta.url)
const reasons = readdirSync(folder).flatMap((file) =>
  [
    ...readFileSync(new URL(file, folder), 'utf8').matchAll(
      /'((?:rate|seconds|hour-hand|fill|stands|hours|jewels|readings|base)-[a-z]+)'/g,
    ),
  ]
    .map(([, reason]) => reason ?? '')
    .filter((reason) => !reason.includes('add')),
)

it.each([...new Set(reasons)])('has a whole sentence for %s', (reason) => {
  const judgement = { stated: 1, found: 2, unit: '', difference: 1, allowed: 0, working: [] }
  const sentence = findingSentence({ ...judgement, outcome: 'disagrees', reason, details: {} })
  expect(sentence).toMatch(/^[A-Z0-9].*\.$/s)
  expect(sentence).not.toContain('undefined')
})
