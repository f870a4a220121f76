import { expect, test } from 'vitest'
import type { ProofLine } from '../../../../core/api/contract.ts'
import { standings } from '../../../../core/proofs/standing.ts'
import { filterLines, groupLines, type SheetFilter } from '../../../../renderer/pages/proofs/sheet-rows.ts'

const line = (of: Partial<ProofLine>): ProofLine => ({
  caliberId: 1,
  maker: 'Verrin',
  designation: '17-220',
  proof: 'beat-rate-follows-train',
  outcome: 'disagrees',
  severity: 'wrong',
  stated: null,
  found: null,
  unit: null,
  difference: null,
  allowed: null,
  message: 'It is off.',
  overruled: null,
  working: [],
  field: null,
  ...of,
})
const wrong = line({})
const doubtful = line({ severity: 'doubtful', outcome: 'doubtful' })
const accepted = line({ caliberId: 2, maker: 'Côme', designation: '9', severity: 'accepted' })
const unchecked = line({ caliberId: 2, maker: 'Côme', designation: '9', severity: 'none', outcome: 'cannot-check' })
const jewels = line({ proof: 'jewels-add-up', message: 'Two too few.' })
const all: SheetFilter = { words: '', maker: '', proof: '', standings }

test('an empty filter lets everything through', () => {
  expect(filterLines([wrong, doubtful, accepted, unchecked], all)).toEqual([wrong, doubtful, accepted, unchecked])
})

test('every word is looked for in name, proof and sentence, whatever its case or accents', () => {
  const lines = [wrong, accepted, jewels]
  expect(filterLines(lines, { ...all, words: 'come' })).toEqual([accepted])
  expect(filterLines(lines, { ...all, words: 'verrin TOO few' })).toEqual([jewels])
  expect(filterLines(lines, { ...all, words: 'beat rate 17' })).toEqual([wrong])
  expect(filterLines(lines, { ...all, words: 'verrin come' })).toEqual([])
})

test('maker, proof and standing narrow it', () => {
  const lines = [wrong, doubtful, accepted, unchecked, jewels]
  expect(filterLines(lines, { ...all, maker: 'Côme' })).toEqual([accepted, unchecked])
  expect(filterLines(lines, { ...all, proof: 'jewels-add-up' })).toEqual([jewels])
  expect(filterLines(lines, { ...all, standings: ['doubtful', 'cannot-check'] })).toEqual([doubtful, unchecked])
})

test('by proof the groups stand in the order of the proofs, the gravest line first', () => {
  const groups = groupLines([jewels, doubtful, accepted, wrong], 'proof')
  expect(groups.map(({ title }) => title)).toEqual(['Beat rate follows the train', 'Jewels add up'])
  expect(groups[0]?.lines).toEqual([wrong, doubtful, accepted])
})

test('by caliber they stand as they came', () => {
  const groups = groupLines([accepted, doubtful, wrong, unchecked], 'caliber')
  expect(groups.map(({ title }) => title)).toEqual(['Côme 9', 'Verrin 17-220'])
  expect(groups[1]?.lines).toEqual([wrong, doubtful])
})

test('by severity the gravest group stands first', () => {
  const groups = groupLines([unchecked, accepted, doubtful, wrong], 'severity')
  expect(groups.map(({ title }) => title)).toEqual(['Wrong', 'Doubtful', 'Accepted', 'Cannot be checked'])
})
