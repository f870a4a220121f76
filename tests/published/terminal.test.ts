import { describe, expect, it } from 'vitest'
import { answered, fileOf, libraryFile } from '../electron/terminal/run-captured.ts'

/*
 * Published trains as they would be entered in a file and proved in the terminal.
 * Grades: A, the text was read and the figure computed again; D, constructed: certain arithmetic with nothing to cite.
 */
const derham = 'W. Derham, The Artificial Clock-maker, 1696'
const eb1810 = 'Encyclopaedia Britannica, 4th ed., 1810'
const playtner = 'H. R. Playtner, An Analysis of the Lever Escapement, 1910'
const goodrich = 'W. L. Goodrich, The Modern Clock, 1905'

interface Proof {
  readonly proof: string
  readonly outcome: string
  readonly found: number | null
}
interface Proved {
  readonly calibers: readonly { readonly proofs: readonly Proof[] }[]
}
type Fields = Readonly<Record<string, number | string>>

const prove = async (fields: Fields) => {
  const caliber = { maker: 'From a book', designation: 'train', fields }
  const { status, document } = await answered<Proved>('prove', fileOf(libraryFile(caliber)))
  const of = (id: string) => document.calibers[0]?.proofs.find(({ proof }) => proof === id)
  return { status, rate: of('beat-rate-follows-train'), seconds: of('seconds-hand-turns-once-a-minute') }
}

const keys = ['centreWheel', 'thirdPinion', 'thirdWheel', 'fourthPinion', 'fourthWheel', 'escapePinion'] as const
/** Wheel over pinion from the centre wheel on; a train of two pairs has no fourth arbor. */
const train = (text: string, escapeTeeth: number): Fields => {
  const counts = text.split(/[/ ]/).map(Number)
  const arbors = counts.length === 4 ? [...keys.slice(0, 3), 'escapePinion'] : keys
  return { ...Object.fromEntries(arbors.map((key, i) => [key, counts[i] ?? 0])), escapeTeeth }
}

const t5 = train('60/8 64/8 48/6', 15)
const t6 = train('60/10 60/6 48/6', 15)
const t10 = train('48/6 45/6 42/6', 19)
const t12 = train('55/5 45/5 40/5', 17)
const t20 = train('72/6 60/6', 30)

describe('a published train agrees with its published rate, with status 0', () => {
  const rows: readonly [string, Fields, number, string][] = [
    ['T5', { ...t5, secondsDisplay: 'small' }, 14400, `${eb1810}, “Science, Amusements of”, Pearson’s numbers; A`],
    ['T6', { ...t6, secondsDisplay: 'small' }, 14400, `${eb1810}, “Clock”; A`],
    [
      'T8, the first two pairs constructed',
      { ...train('64/8 60/8 75/8', 16), secondsDisplay: 'small' },
      18000,
      `${playtner}, p. 7: fourth 75 on 8, 16 teeth, 300 a minute; A`,
    ],
    ['T10', { ...t10, secondsDisplay: 'small' }, 15960, `${derham}, p. 121 sect. 1; A`],
    ['T12', { ...t12, hoursPerCentreTurn: '4/3' }, 20196, `${derham}, pp. 19–25, with dial 36/4; A`],
    ['T20', t20, 7200, `${eb1810}, “Clock”; A`],
  ]
  it.each(rows)('%s', async (_id, fields, rate, _source) => {
    const { status, rate: proof, seconds } = await prove({ ...fields, beatRateVph: rate })
    expect(proof).toMatchObject({ outcome: 'agrees', stated: rate, found: rate, unit: 'vph', difference: 0 })
    if ('secondsDisplay' in fields) expect(seconds).toMatchObject({ outcome: 'agrees', found: 60 })
    expect(status).toBe(0)
  })

  it('T12 with its hours as a decimal number agrees as well as the number can say', async () => {
    const { status, rate } = await prove({ ...t12, hoursPerCentreTurn: 4 / 3, beatRateVph: 20196 })
    expect(rate).toMatchObject({ outcome: 'agrees', found: expect.closeTo(20196, 9) })
    expect(status).toBe(0)
  })
})

describe('the rate may be given as it is printed', () => {
  it.each([
    ['T5 as 4/s', t5, '4/s', `${eb1810}, Pearson’s numbers: exactly 4 a second; A`],
    ['T8 as 300/min', train('64/8 60/8 75/8', 16), '300/min', `${playtner}, p. 7; A`],
    ['T8 as 18,000', train('64/8 60/8 75/8', 16), '18,000', 'a thousands comma as in English print (common practice)'],
  ])('%s', async (_id, fields, beatRateVph, _source) => {
    expect((await prove({ ...fields, beatRateVph })).rate).toMatchObject({ outcome: 'agrees', difference: 0 })
  })
})

describe('a published rate that the train does not give', () => {
  it(`T10: the nominal 16 000 is doubtful, which is no fault in the work (${derham}, p. 122 sect. 3; A)`, async () => {
    const { status, rate } = await prove({ ...t10, beatRateVph: 16000 })
    expect(rate).toMatchObject({ outcome: 'doubtful', found: 15960, difference: -40 })
    expect(status).toBe(0)
  })

  it(`E2: 7 200 whole oscillations printed as vibrations disagrees, with status 1 (${goodrich}, p. 192; A)`, async () => {
    const { status, rate } = await prove({ ...train('48/6 48/6 45/6', 15), beatRateVph: 7200 })
    expect(rate).toMatchObject({ outcome: 'disagrees', stated: 7200, found: 14400 })
    expect(status).toBe(1)
  })

  it('T12 without its hours a turn is taken for a train whose first wheel turns once an hour', async () => {
    const { status, rate } = await prove({ ...t12, beatRateVph: 20196 })
    expect(rate).toMatchObject({ outcome: 'disagrees', found: 26928 })
    expect(status).toBe(1)
  })

  it('T1: a fourth arbor that turns 72 times an hour carries no seconds hand (the same encyclopaedia, ex. 1; A)', async () => {
    const { status, rate, seconds } = await prove({
      ...train('54/6 48/6 48/6', 15),
      beatRateVph: 17280,
      secondsDisplay: 'small',
    })
    expect(rate).toMatchObject({ outcome: 'agrees', found: 17280 })
    expect(seconds).toMatchObject({ outcome: 'disagrees', found: 72 })
    expect(status).toBe(1)
  })
})
