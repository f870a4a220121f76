import { expect, test } from 'vitest'
import type { ProofLine } from '../../../core/api/contract.ts'
import { rowsFromProofLines } from '../../../core/exchange/proofs-table.ts'

const line: ProofLine = {
  caliberId: 3,
  maker: 'Verrin',
  designation: '8-310',
  proof: 'beat-rate-follows-train',
  outcome: 'disagrees',
  severity: 'accepted',
  stated: 18000,
  found: 13680,
  unit: 'vph',
  difference: -4320,
  allowed: 0.5,
  message: 'It is off.',
  overruled: 'Accepted: beats so.',
  working: [
    { formula: '80/10 × 57/10 × 80/8 × 2 × 15', gives: 13680 },
    { formula: '1 + 1', gives: 2 },
  ],
  field: 'beatRateVph',
}

test('a line is a row with the columns of the sheet, figures as numbers and the rule by its source', () => {
  const [headings, row] = rowsFromProofLines([line])
  expect(headings).toEqual([
    'maker',
    'designation',
    'proof',
    'outcome',
    'severity',
    'stated',
    'found',
    'unit',
    'difference',
    'allowed',
    'message',
    'working',
    'source',
  ])
  expect(row).toEqual([
    'Verrin',
    '8-310',
    'beat-rate-follows-train',
    'disagrees',
    'accepted',
    18000,
    13680,
    'vph',
    -4320,
    0.5,
    'It is off. Accepted: beats so.',
    '80/10 × 57/10 × 80/8 × 2 × 15 = 13\u202f680; 1 + 1 = 2',
    expect.stringContaining('W. Derham, The Artificial Clock-maker, 1696'),
  ])
})

test('what there is not is left empty', () => {
  const nothing = { stated: null, found: null, unit: null, difference: null, allowed: null, overruled: null }
  const [, row] = rowsFromProofLines([{ ...line, ...nothing, working: [], proof: 'from-a-newer-version' }])
  expect(row?.slice(5)).toEqual(['', '', '', '', '', 'It is off.', '', ''])
})
