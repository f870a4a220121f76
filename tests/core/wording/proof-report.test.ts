import { expect, it } from 'vitest'
import { proveCaliber } from '../../../core/proofs/prove.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { proofReports, reportFinding } from '../../../core/wording/proof-report.ts'
import { caliberOf } from '../../support/caliber-of.ts'

const report = (id: string, values: CaliberValues, jewels: Parameters<typeof caliberOf>[1] = []) => {
  const found = proofReports(caliberOf(values, jewels)).find(({ proof }) => proof === id)
  if (found === undefined) throw new Error(`no report of ${id}`)
  return found
}
const watch: CaliberValues = {
  beatRateVph: 18000,
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 74,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}

it('says what was stated, what was found, by how much and what to do', () => {
  expect(report('beat-rate-follows-train', watch).message).toBe(
    '18\u202f000 vibrations an hour is stated; the train gives 17\u202f760, 240 less (1152 s a day). ' +
      'Count the wheels and pinions again, or look the rate up in another source.',
  )
})

it('carries the members of the contract, and hints', () => {
  expect(Object.keys(report('beat-rate-follows-train', watch)).sort()).toEqual(
    [
      'proof',
      'outcome',
      'stated',
      'found',
      'unit',
      'difference',
      'allowed',
      'missing',
      'fields',
      'working',
      'source',
      'message',
      'hints',
      'severity',
      'overruled',
    ].sort(),
  )
})

it('lists the fields it needs and those it used, and no fifth wheel where none is stated', () => {
  const { fields } = report('beat-rate-follows-train', watch)
  expect([...fields].sort()).toEqual(Object.keys(watch).sort())
})

it('names what is missing in words and by key', () => {
  const { fourthPinion: _, ...gap } = watch
  expect(report('beat-rate-follows-train', gap)).toMatchObject({
    outcome: 'cannot-check',
    missing: ['fourthPinion'],
    message: 'Cannot be checked yet. Not stated: fourth pinion.',
  })
  expect(report('jewels-add-up', {}).missing).toEqual(['jewelsStated', 'jewels'])
})

it('gives the usual caution wherever the barrel has to be opened', () => {
  const { message } = report('spring-stands-within-barrel', { barrelDepthMm: 1.4, springHeightMm: 1.5 })
  expect(message).toContain('0.1 mm too high')
  expect(message).toContain('Let the mainspring down fully')
})

it('has a sentence for figures outside the range', () => {
  const sizes = { barrelInsideMm: 9, barrelArborMm: 9.5, springThicknessMm: 0.1, springLengthMm: 300 }
  expect(report('spring-fills-barrel', sizes)).toMatchObject({ outcome: 'outside-range', unit: null })
  expect(report('spring-fills-barrel', sizes).message).toContain('leaves no room')
})

it('says what a finding weighs and what its owner made of it, and leaves the outcome as it is', () => {
  const overruled = (of: 'disagrees' | 'doubtful') => {
    const overrules = [
      { proof: 'beat-rate-follows-train', severity: 'accepted', reason: 'Beats so on the bench.', of } as const,
    ]
    return proofReports({ ...caliberOf(watch), overrules }).find(({ proof }) => proof === 'beat-rate-follows-train')
  }
  expect(report('beat-rate-follows-train', watch)).toMatchObject({ severity: 'wrong', overruled: null })
  expect(overruled('disagrees')).toMatchObject({
    outcome: 'disagrees',
    severity: 'accepted',
    overruled: { severity: 'accepted', reason: 'Beats so on the bench.', applies: true },
  })
  expect(overruled('doubtful')).toMatchObject({ severity: 'wrong', overruled: { applies: false } })
})

it('leaves the hints out where they are not wanted', () => {
  const caliber = caliberOf({ ...watch, thirdWheel: 57 })
  const finding = proveCaliber(caliber).find(({ proof }) => proof.id === 'beat-rate-follows-train')
  if (finding === undefined) throw new Error('no finding')
  const { hints, ...full } = reportFinding(finding, caliber)
  expect(hints.length).toBeGreaterThan(0)
  expect(reportFinding(finding, caliber, { withHints: false })).toEqual({ ...full, hints: [] })
})
