import { expect, it } from 'vitest'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import { withBases } from '../../../core/record/bases.ts'
import { openCaliber } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { demoCalibers } from '../../seed-data/demo-library.ts'
import { evaluateFormula, roundingOf } from '../../support/evaluate-formula.ts'

const calibers = withBases(demoCalibers.map(({ caliber }) => readEntry(openCaliber(caliber)).caliber))
/** Worked out within the test: a proof that runs while a file is read counts as run by every test. */
const stepsOfAll = () =>
  calibers.flatMap((caliber) =>
    proveCaliber(caliber).flatMap(({ proof, judgement }) =>
      'working' in judgement ? judgement.working.map((step) => ({ proof: proof.id, ...step })) : [],
    ),
  )

it('every line of working over the demo library comes to what it says, within the figures that it rounds', () => {
  const reckoned = stepsOfAll().flatMap(({ proof, formula, gives }) => {
    const worked = evaluateFormula(formula)
    const said = typeof gives === 'number' ? gives : evaluateFormula(gives)?.value
    return worked === null || said === undefined ? [] : [{ proof, formula, worked: worked.value, said }]
  })
  expect(new Set(reckoned.map(({ proof }) => proof)).size).toBeGreaterThan(9)
  for (const { proof, formula, worked, said } of reckoned) {
    const allowed = 1e-9 * Math.max(1, Math.abs(said)) + roundingOf(formula) + 5e-5
    expect(Math.abs(worked - said), `${proof}: ${formula} = ${said}`).toBeLessThanOrEqual(allowed)
  }
})

it('every proof that judges by figures shows its working', () => {
  const silent = new Set(['sources-agree', 'variant-keeps-its-base'])
  for (const caliber of calibers) {
    for (const { proof, judgement } of proveCaliber(caliber)) {
      if (!('working' in judgement) || judgement.outcome === 'agrees' || silent.has(proof.id)) continue
      expect(judgement.working.length, proof.id).toBeGreaterThan(0)
    }
  }
})
