import { expect, test } from 'vitest'
import {
  answered,
  fileOf,
  goodTrain,
  libraryFile,
  libraryOf,
  refused,
  runCaptured,
  wrongTrain,
} from './run-captured.ts'

interface Missing {
  readonly unknown: readonly string[]
  readonly solutions: readonly { counts: Record<string, number>; beatRateVph: number | null; remarks: string[] }[]
  readonly nearest?: readonly { counts: Record<string, number>; rateErrorSecondsPerDay: number }[]
  readonly complete: boolean
}

const without = (...keys: readonly string[]) => ({
  ...goodTrain,
  fields: Object.fromEntries(Object.entries(goodTrain.fields).filter(([key]) => !keys.includes(key))),
})
const noThird = fileOf(libraryFile(without('thirdWheel')))
/** 18 000 with 16 escape teeth wants a fourth wheel of 93.75 on 10 leaves. */
const none = { ...goodTrain, fields: { ...without('fourthWheel').fields, escapeTeeth: 16, escapePinion: 7 } }

test('an absent count is answered in the form of the contract', async () => {
  expect(await answered<Missing>('missing', noThird)).toEqual({
    status: 0,
    document: {
      unknown: ['thirdWheel'],
      solutions: [{ counts: { thirdWheel: 75 }, beatRateVph: 18000, remarks: [] }],
      complete: true,
    },
  })
})

test('named counts are looked for though they are stated, by key or by name', async () => {
  for (const named of ['thirdWheel,fourthPinion', 'third wheel, Fourth pinion']) {
    const { status, document } = await answered<Missing>('missing', fileOf(libraryFile(goodTrain)), '--unknown', named)
    expect(status).toBe(0)
    expect(document.unknown).toEqual(['thirdWheel', 'fourthPinion'])
    expect(document.solutions[0]).toEqual({
      counts: { thirdWheel: 75, fourthPinion: 10 },
      beatRateVph: 18000,
      remarks: [],
    })
    expect(document.solutions).toHaveLength(10)
    expect(document.solutions.at(-1)?.remarks).not.toEqual([])
  }
})

test('where none fits status is 1 and the nearest come with their error', async () => {
  const { status, document } = await answered<Missing>('missing', fileOf(libraryFile(none)))
  expect(status).toBe(1)
  expect(document).toMatchObject({ unknown: ['fourthWheel'], solutions: [], complete: true })
  expect(document.nearest?.map(({ counts }) => counts.fourthWheel)).toEqual([66, 65])
  expect(document.nearest?.[0]?.rateErrorSecondsPerDay).toBeCloseTo(493.714, 3)
})

test('for a person the answers stand in a table with the working and what would decide', async () => {
  const { status, out } = await runCaptured('missing', fileOf(libraryFile(without('thirdWheel', 'fourthPinion'))))
  expect(status).toBe(0)
  expect(out).toMatch(/^Verrin 17-220\n10 answers fit, the most customary first\.\n {2}Third wheel +Fourth pinion/)
  expect(out).toContain('80/10 × 75/10 × 80/8 × 2 × 15 = 18\u202f000')
  expect(out).toContain('Count the fourth pinion: 6, 8, 10')
  const nothing = await runCaptured('missing', fileOf(libraryFile(none)))
  expect(nothing.status).toBe(1)
  expect(nothing.out).toContain('No whole number of teeth that is cut fits: fourth wheel.')
  expect(nothing.out).toMatch(/Fourth wheel 66 gives .* 493\.7 s a day more than stated\./)
})

test('a long list for a person is cut, and says so', async () => {
  const file = fileOf(libraryFile(without('fourthWheel', 'escapePinion', 'escapeTeeth')))
  const { out } = await runCaptured('missing', file)
  expect(out).toMatch(/ {2}and \d+ more; --json lists them all\n/)
})

test('one caliber of several is named', async () => {
  const file = fileOf(libraryFile(without('thirdWheel'), wrongTrain))
  expect(await refused('missing', file)).toMatch(/holds 2 calibers; name one of them with --caliber\.$/m)
  const { document } = await answered<Missing>('missing', file, '--caliber', '17-220')
  expect(document.solutions[0]?.counts).toEqual({ thirdWheel: 75 })
  const library = await libraryOf(without('thirdWheel'), wrongTrain)
  expect((await answered('missing', '--library', library, '--caliber', '17-220')).document).toEqual(document)
})

test('what cannot be used is refused in one sentence', async () => {
  expect(await refused('missing', noThird, '--unknown', 'balanceWheel')).toContain("'balanceWheel'")
  expect(await refused('missing', noThird, '--unknown', 'diameterMm')).toContain('no count of teeth or leaves')
  expect(await refused('missing', noThird, '--unknown', '')).toContain("''")
  expect(await refused('missing', noThird, '--unknown', 'barrelTeeth')).toContain(
    'calibers[0].fields.barrelTeeth: Nothing stated binds the barrel teeth',
  )
  const pair = await refused('missing', noThird, '--unknown', 'barrelTeeth,sweepDriver')
  expect(pair).toContain('would bind it; nothing stated binds the sweep driver: it counts where')
  expect(await refused('missing', fileOf(libraryFile(goodTrain)))).toContain('calibers[0]: No count is missing')
  expect(await refused('missing', fileOf(libraryFile({ ...goodTrain, fields: {} })))).toContain('Neither a beat rate')
  expect(await refused('missing', fileOf(libraryFile()))).toContain('holds no caliber')
  const open = fileOf(libraryFile(without('thirdWheel', 'fourthPinion')))
  expect(await refused('missing', open, '--unknown', 'thirdWheel')).toContain('Without the fourth pinion')
})
