import { expect, it } from 'vitest'
import { trainFindings } from '../../../../core/wording/findings/train-findings.ts'

const judgement = { unit: '', difference: 0, allowed: 0, working: [], outcome: 'disagrees' } as const

it('says by how much a rate is off, in vibrations and in seconds a day', () => {
  expect(
    trainFindings['rate-differs']?.({
      ...judgement,
      reason: 'rate-differs',
      stated: 18000,
      found: 18240,
      difference: 240,
      details: { secondsPerDay: 1152 },
    }),
  ).toBe(
    '18 000 vibrations an hour is stated; the train gives 18 240, 240 more (1152 s a day). Count the wheels and pinions again, or look the rate up in another source.',
  )
})

it('names the arbor of the seconds hand and its turns', () => {
  expect(
    trainFindings['seconds-true']?.({
      ...judgement,
      reason: 'seconds-true',
      stated: 60,
      found: 60,
      details: { arbor: 'sweep', found: 60 },
    }),
  ).toBe('The sweep pinion turns 60 times an hour, so the seconds hand goes round once a minute.')
})

it('says which count nobody cuts, and how many beside it', () => {
  expect(
    trainFindings['counts-many']?.({
      ...judgement,
      reason: 'counts-many',
      stated: 230,
      found: 200,
      difference: 30,
      details: { field: 'fourthWheel', others: 1 },
    }),
  ).toBe(
    '230 is stated for the fourth wheel, more than the 200 that are cut at the most, and 1 other count beside it. Count it again.',
  )
})

it('calls an uncommon rate a remark, not an error', () => {
  const uncommon = { ...judgement, outcome: 'doubtful', reason: 'rate-uncommon', stated: null, found: 17760 } as const
  const details = { of: 'train', nearest: 18000 }
  expect(trainFindings['rate-uncommon']?.({ ...uncommon, difference: -240, details })).toMatch(
    /^The train gives 17.760 vibrations an hour, which is none of the customary rates; the nearest is 18.000, 240 more\. .* no error/,
  )
})
