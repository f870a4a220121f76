import { expect, it } from 'vitest'
import { proofReports } from '../../../core/wording/proof-report.ts'
import { sourcesSentence } from '../../../core/wording/sources-sentence.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const messageOf = (fields: Parameters<typeof caliberPrinted>[0]) =>
  proofReports(caliberPrinted(fields)).find(({ proof }) => proof === 'sources-agree')?.message

it('names the field, both prints, their sources, how far apart they lie and which the proofs favour', () => {
  const readings = [
    { printed: '0,81', source: 'tables', page: '118', chosen: true },
    { printed: '0.18', source: 'own' },
  ]
  expect(messageOf({ ...soundWatch, springThicknessMm: readings })).toBe(
    'Spring thickness: 0,81 (tables, page 118) against 0.18 (own), 0.63 mm apart; the printed rounding explains 0.01 mm. ' +
      'Look both up again, choose one and note why. The proofs favour 0.18 (own): they find less wrong than with the other.',
  )
})

it('favours none where no proof decides', () => {
  expect(messageOf({ jewelsStated: ['15', '16'] })).toBe(
    'Jewels stated: 15 (no source) against 16 (no source), 1 apart. Look both up again, choose one and note why.',
  )
})

it('says so where the favoured reading is the one chosen', () => {
  expect(messageOf({ ...soundWatch, thirdWheel: ['75', '57', '58'] })).toContain(
    'The proofs favour 75 (no source), the one chosen: they find less wrong than with any other.',
  )
})

it('says that readings meet', () => {
  expect(messageOf({ thirdWheel: ['75', '75'] })).toContain('meet within their printed rounding')
})

it('is a whole sentence whatever is missing', () => {
  expect(
    sourcesSentence({
      outcome: 'disagrees',
      stated: null,
      found: null,
      unit: '',
      difference: null,
      allowed: null,
      working: [],
      reason: 'readings-differ',
    }),
  ).toBe('Look both up again, choose one and note why.')
})
