import { expect, test } from 'vitest'
import { answered, fileOf, goodTrain, libraryFile, libraryOf, runCaptured, wrongTrain } from './run-captured.ts'

interface Proved {
  readonly calibers: readonly {
    readonly maker: string
    readonly designation: string
    readonly proofs: readonly {
      readonly proof: string
      readonly outcome: string
      readonly working: readonly unknown[]
    }[]
  }[]
}

/** The keys of a PROOF in the order of the contract. */
const proofKeys = [
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
]
const outcomes = ['agrees', 'disagrees', 'doubtful', 'cannot-check', 'outside-range']

test('each caliber is answered with its proofs, every one of the same form', async () => {
  const { status, document } = await answered<Proved>('prove', fileOf(libraryFile(goodTrain, wrongTrain)))
  expect(status).toBe(1)
  expect(Object.keys(document)).toEqual(['calibers'])
  expect(document.calibers.map(({ maker, designation }) => [maker, designation])).toEqual([
    ['Verrin', '17-220'],
    ['Verrin', '17-221'],
  ])
  for (const caliber of document.calibers) {
    expect(Object.keys(caliber)).toEqual(['maker', 'designation', 'proofs'])
    for (const proof of caliber.proofs) {
      expect(Object.keys(proof)).toEqual(expect.arrayContaining(proofKeys))
      expect(outcomes).toContain(proof.outcome)
    }
  }
  const rate = document.calibers.map(({ proofs }) => proofs.find(({ proof }) => proof === 'beat-rate-follows-train'))
  expect(rate).toMatchObject([
    {
      outcome: 'agrees',
      stated: 18000,
      found: 18000,
      unit: 'vph',
      difference: 0,
      missing: [],
    },
    { outcome: 'disagrees', stated: 18000, found: 16800, difference: -1200 },
  ])
  expect(rate[0]?.working[0]).toMatchObject({ where: { thirdWheel: 75, escapeTeeth: 15 }, gives: 18000 })
})

test('nothing that disagrees is status 0, though something cannot be checked', async () => {
  const { status, document } = await answered<Proved>('prove', fileOf(libraryFile({ ...goodTrain, fields: {} })))
  expect(status).toBe(0)
  expect(document.calibers[0]?.proofs).toContainEqual(
    expect.objectContaining({ outcome: 'cannot-check', missing: expect.arrayContaining(['beatRateVph']) }),
  )
  expect(await answered('prove', fileOf(libraryFile()))).toEqual({ status: 0, document: { calibers: [] } })
})

test('a library is proved as its file would be', async () => {
  const { status, document } = await answered('prove', '--library', await libraryOf(goodTrain, wrongTrain))
  expect(status).toBe(1)
  expect(document).toEqual((await answered('prove', fileOf(libraryFile(goodTrain, wrongTrain)))).document)
})

test('for a person what disagrees is marked by more than colour, with its working', async () => {
  const { status, out } = await runCaptured('prove', fileOf(libraryFile(wrongTrain)))
  expect(status).toBe(1)
  expect(out).toMatch(/^Verrin 17-221\n.*✕ disagrees +beat-rate-follows-train\n/s)
  expect(out).toContain(
    '      80/10 × 70/10 × 80/8 × 2 × 15 = 16\u202f800\n      cancelled: 8 × 7 × 10 × 2 × 15 = 16\u202f800\n',
  )
})

test('in prose a disagreeing proof asks after the misprint that would explain it', async () => {
  const exchanged = { ...goodTrain, fields: { ...goodTrain.fields, thirdWheel: '57' } }
  const { out } = await runCaptured('prove', fileOf(libraryFile(exchanged)))
  expect(out).toContain('A misprint? Third wheel 75 instead of 57 gives')
})

const reason = 'The book has it so'
const accepted = {
  ...wrongTrain,
  overrules: ['beat-rate-follows-train', 'seconds-hand-turns-once-a-minute'].map((proof) => ({
    proof,
    severity: 'accepted',
    reason,
    of: 'disagrees',
  })),
}

test('an accepted finding is status 0, and still says what it found, and why it is accepted', async () => {
  const { status, out } = await runCaptured('prove', fileOf(libraryFile(accepted)))
  expect(status).toBe(0)
  expect(out).toMatch(/✕ disagrees +beat-rate-follows-train\n.*\n +✎ Accepted: The book has it so\.\n/)
  const { document } = await answered<Proved>('prove', '--library', await libraryOf(accepted))
  expect(document.calibers[0]?.proofs).toContainEqual(
    expect.objectContaining({
      proof: 'beat-rate-follows-train',
      outcome: 'disagrees',
      severity: 'accepted',
      overruled: { severity: 'accepted', reason, applies: true },
    }),
  )
})

test('an overrule of a finding that has changed since does not count, and says so', async () => {
  const overrules = accepted.overrules.map((overrule) => ({ ...overrule, of: 'doubtful' }))
  const changed = { ...wrongTrain, overrules }
  const { status, out } = await runCaptured('prove', fileOf(libraryFile(changed)))
  expect(status).toBe(1)
  expect(out).toContain('The finding has changed since; look again.')
})
