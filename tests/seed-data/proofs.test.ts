import { describe, expect, it } from 'vitest'
import type { FileCaliber } from '../../core/exchange/library-file.ts'
import { proofs } from '../../core/proofs/index.ts'
import { misprintHelp } from '../../core/proofs/misprint-help.ts'
import { proveCaliber } from '../../core/proofs/prove.ts'
import { withBases } from '../../core/record/bases.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import { openCaliber } from '../../core/record/entry.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { demoCalibers, plantedMisprints } from './demo-library.ts'

const nameOf = (caliber: FileCaliber): string => `${caliber.maker} ${caliber.designation}`

const read = (caliber: FileCaliber): Caliber => readEntry(openCaliber(caliber)).caliber

/** The caliber over its base, should it have one in the library. */
const overItsBase = (caliber: FileCaliber): Caliber => {
  const own = read(caliber)
  if (own.values.basedOn === undefined) return own
  const others = demoCalibers.filter(({ caliber: other }) => nameOf(other) !== nameOf(caliber))
  return withBases([own, ...others.map(({ caliber: other }) => read(other))])[0] ?? own
}

/** The ids of the proofs of one caliber that come out so. */
const proofsThat = (outcome: string, caliber: FileCaliber): readonly string[] =>
  proveCaliber(overItsBase(caliber))
    .filter(({ judgement }) => judgement.outcome === outcome)
    .map(({ proof }) => proof.id)

const withRightValue = (caliber: FileCaliber): FileCaliber => {
  const misprint = plantedMisprints.find(({ caliber: name }) => name === nameOf(caliber))
  return misprint === undefined
    ? caliber
    : { ...caliber, fields: { ...caliber.fields, [misprint.field]: misprint.right } }
}

describe('the demo library under its own proofs', () => {
  it('is read without a problem and without an unknown field', () => {
    for (const { file, caliber } of demoCalibers) {
      const { problems, unknownKeys } = readEntry(openCaliber(caliber))
      expect(problems, file).toEqual([])
      expect(unknownKeys, file).toEqual([])
    }
  })

  it('has a disagreeing proof in exactly the calibers that the scenario names', () => {
    const disagreeing = demoCalibers
      .filter(({ caliber }) => proofsThat('disagrees', caliber).length > 0)
      .map(({ caliber }) => nameOf(caliber))
    expect(disagreeing.toSorted()).toEqual(plantedMisprints.map(({ caliber }) => caliber).toSorted())
  })

  it('disagrees there in exactly the proofs that the scenario names', () => {
    for (const { caliber: name, proofs } of plantedMisprints) {
      const misprinted = demoCalibers.filter(({ caliber }) => nameOf(caliber) === name)
      expect(misprinted.flatMap(({ caliber }) => proofsThat('disagrees', caliber)).toSorted(), name).toEqual(
        proofs.toSorted(),
      )
    }
  })

  it('leaves nothing disagreeing, doubtful or out of range once the three are corrected', () => {
    for (const { file, caliber } of demoCalibers) {
      const corrected = withRightValue(caliber)
      for (const outcome of ['disagrees', 'doubtful', 'outside-range']) {
        expect(proofsThat(outcome, corrected), `${file} ${outcome}`).toEqual([])
      }
    }
  })

  it('doubts nothing in a caliber without a misprint', () => {
    const misprinted = new Set(plantedMisprints.map(({ caliber }) => caliber))
    for (const { file, caliber } of demoCalibers) {
      if (!misprinted.has(nameOf(caliber))) expect(proofsThat('doubtful', caliber), file).toEqual([])
    }
  })
})

it('keeps each variant true to its base in train and barrel', () => {
  const variants = demoCalibers.filter(({ caliber }) => caliber.fields.basedOn !== undefined)
  expect(variants.length).toBeGreaterThanOrEqual(3)
  for (const { file, caliber } of variants) {
    expect(proofsThat('agrees', caliber), file).toContain('variant-keeps-its-base')
  }
})

it('hints first at the right value of each planted misprint', () => {
  for (const { caliber: name, field, right } of plantedMisprints) {
    const { caliber } = demoCalibers.find(({ caliber }) => nameOf(caliber) === name) ?? {}
    if (caliber === undefined) throw new Error(name)
    const misprinted = read(caliber)
    for (const finding of proveCaliber(misprinted)) {
      if (finding.judgement.outcome !== 'disagrees' || finding.proof.id === 'sources-agree') continue
      expect(misprintHelp(finding, misprinted)[0], `${name}: ${finding.proof.id}`).toMatchObject({
        field,
        meant: right,
      })
    }
  }
})

it('lets every proof agree for at least one of its calibers', () => {
  const agreeing = new Set(demoCalibers.flatMap(({ caliber }) => proofsThat('agrees', caliber)))
  expect(proofs.map(({ id }) => id).filter((id) => !agreeing.has(id))).toEqual([])
})
