import { expect, test } from 'vitest'
import { blankEntry } from '../../../../core/record/entry.ts'
import { readEntry } from '../../../../core/record/read-entry.ts'
import { withOverrule } from '../../../../core/record/with-overrule.ts'
import { proofReports } from '../../../../core/wording/proof-report.ts'
import { proofMarks } from '../../../../renderer/pages/entry/proof-marks.ts'

const train = {
  beatRateVph: '18000',
  centreWheel: '80',
  thirdPinion: '10',
  fourthPinion: '10',
  fourthWheel: '80',
  escapePinion: '8',
  escapeTeeth: '15',
}
const marksOf = (thirdWheel: string, counts: Record<string, string> = train) => {
  const fields = Object.fromEntries(
    Object.entries({ ...counts, thirdWheel }).map(([key, printed]) => [key, [{ printed }]]),
  )
  return proofMarks(proofReports(readEntry({ ...blankEntry(), fields }).caliber))
}

test('a third wheel of 57 for 75 marks every field of the train with the proof that disagrees', () => {
  const marks = marksOf('57')
  expect(marks.get('thirdWheel')?.outcome).toBe('disagrees')
  expect(marks.get('thirdWheel')?.text).toBe('Beat rate follows the train: disagrees')
  expect(marks.get('escapeTeeth')?.outcome).toBe('disagrees')
})

test('a field that several proofs doubt counts them', () => {
  const seconds = { ...train, secondsDisplay: 'small' }
  expect(marksOf('57', seconds).get('thirdWheel')?.text).toBe('2 proofs disagree')
})

test('a train that agrees marks nothing', () => {
  expect(marksOf('75').size).toBe(0)
})

test('a finding that is accepted marks no field, one that counts as doubtful says so', () => {
  const fields = Object.fromEntries(
    Object.entries({ ...train, thirdWheel: '90' }).map(([key, printed]) => [key, [{ printed }]]),
  )
  const marks = (severity: 'accepted' | 'doubtful') => {
    const overrule = { severity, reason: 'Seen.', of: 'disagrees' } as const
    const entry = withOverrule({ ...blankEntry(), fields }, 'beat-rate-follows-train', overrule)
    return proofMarks(proofReports(readEntry(entry).caliber))
  }
  expect(marks('accepted').size).toBe(0)
  expect(marks('doubtful').get('thirdWheel')).toEqual({
    outcome: 'doubtful',
    text: 'Beat rate follows the train: counts as doubtful',
  })
})
