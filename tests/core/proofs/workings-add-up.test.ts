import { expect, it } from 'vitest'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import { withBases } from '../../../core/record/bases.ts'
import { openCaliber } from '../../../core/record/entry.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { demoCalibers } from '../../seed-data/demo-library.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'
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

it('no sum is written with more decimals than a watchmaker would, whatever a size was printed in', () => {
  const inLignes = caliberPrinted({
    barrelInsideMm: "7'''",
    barrelArborMm: "2'''",
    barrelDepthMm: ["1'''", '2.3'],
    springHeightMm: "7/8'''",
    springThicknessMm: "0.07'''",
    springLengthMm: "210'''",
    springEnd: 'slipping bridle',
    bridleThicknessMm: "1/20'''",
    goingHours: '40 h',
    barrelTeeth: '84',
    centrePinion: '14',
    hourHandMm: "1/2'''",
    minuteHandMm: '0,8',
  })
  const variant = { ...inLignes, values: { ...inLignes.values, basedOn: '1' } }
  const base = caliberPrinted({ barrelInsideMm: "7 1/4'''" })
  const formulas = proveCaliber({ ...variant, base }).flatMap(({ judgement }) =>
    'working' in judgement ? judgement.working.map(({ formula }) => formula) : [],
  )
  expect(formulas.length).toBeGreaterThan(10)
  expect(formulas.filter((formula) => /[.]\d{5,}/.test(formula))).toEqual([])
})
