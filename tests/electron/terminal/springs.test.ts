import { expect, test } from 'vitest'
import { answered, fileOf, libraryFile, refused, runCaptured } from './run-captured.ts'

const caliber = {
  maker: 'Verrin',
  designation: '11-300',
  fields: {
    barrelInsideMm: 10.5,
    barrelArborMm: 3.4,
    barrelDepthMm: 1.6,
    springHeightMm: '1,50',
    springThicknessMm: '0,105',
    springLengthMm: 360,
    springEnd: 'tongue',
    barrelTeeth: 80,
    centrePinion: 10,
    goingHours: 40,
  },
}
const spring = (supplierRef: string, thicknessMm: number | string, more: object = {}) => ({
  supplierRef,
  heightMm: 1.5,
  thicknessMm,
  lengthMm: 360,
  end: 'tongue',
  ...more,
})
const springs = [
  spring('strong', 0.11),
  spring('high', 0.105, { heightMm: 1.7 }),
  spring('right', '.105', { tray: 'Drawer 3', inStock: 2 }),
  spring('thin', 0.1, { tray: 'Drawer 3' }),
]
const file = (more: unknown[] = springs) => fileOf({ ...libraryFile(caliber), springs: more })

interface Ranked {
  readonly specified: Readonly<Record<string, number | string | null>>
  readonly candidates: readonly (Readonly<Record<string, unknown>> & { readonly reasons: readonly string[] })[]
}
const rankedOf = (...args: string[]) => answered<Ranked>('springs', ...args)

test('springs answers with the specified spring and every candidate, the best first', async () => {
  const { status, document } = await rankedOf(file(), '--caliber', '11-300')
  expect(status).toBe(0)
  expect(document.specified).toMatchObject({ heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360, end: 'tongue' })
  expect(document.candidates.map(({ supplierRef, verdict }) => [supplierRef, verdict])).toEqual([
    ['right', 'as-specified'],
    ['thin', 'acceptable'],
    ['strong', 'not-advised'],
    ['high', 'does-not-fit'],
  ])
  expect(Object.keys(document.candidates[1] ?? {})).toEqual(
    expect.arrayContaining([
      'supplierRef',
      'verdict',
      'heightClearanceMm',
      'fill',
      'turns',
      'goingHours',
      'torqueRate',
      'torqueFullWind',
      'reasons',
    ]),
  )
  expect(document.candidates[2]?.reasons[0]).toContain('cleaning and repair, not force')
  expect(document.candidates[2]?.torqueRate).toBeCloseTo(1.1498, 4)
})

test('a tray is named to rank its springs alone, in the file or in one of its own', async () => {
  const inDrawer = await rankedOf(file(), '--caliber', 'Verrin 11-300', '--tray', 'drawer 3')
  expect(inDrawer.document.candidates.map(({ supplierRef }) => supplierRef)).toEqual(['right', 'thin'])
  const other = fileOf({ lignebook: 1, springs: [spring('elsewhere', 0.105)] }, 'tray.json')
  const elsewhere = await rankedOf(file(), '--caliber', '11-300', '--tray', other)
  expect(elsewhere.document.candidates.map(({ supplierRef }) => supplierRef)).toEqual(['elsewhere'])
})

test('status is 1 where no spring is as specified or acceptable', async () => {
  expect(await rankedOf(file([spring('strong', 0.12)]), '--caliber', '11-300')).toMatchObject({ status: 1 })
  expect(await rankedOf(file([]), '--caliber', '11-300')).toMatchObject({ status: 1, document: { candidates: [] } })
})

test('without --json it prints the line to order by, verdicts, reasons and a caution', async () => {
  const { status, out } = await runCaptured('springs', file(), '--caliber', '11-300')
  expect(status).toBe(0)
  expect(out).toContain('specified: 1.50 × 0.105 × 360 × 10.5')
  expect(out).toContain('Order what the maker specified')
  expect(out).toContain('✓ as specified')
  expect(out).toContain('✕ does not fit')
})

test('what cannot be used is refused in one sentence that names the place', async () => {
  expect(await refused('springs', file())).toContain('--caliber')
  expect(await refused('springs', file(), '--caliber', '99')).toContain('no caliber 99')
  expect(await refused('springs', file(), '--caliber', '11-300', '--tray', 'attic')).toContain('no tray attic')
  const bad = file([spring('odd', 0.105), { ...spring('bad', 0.105), heightMm: 'tall' }])
  expect(await refused('springs', bad, '--caliber', '11-300')).toContain('springs[1].heightMm')
})

const gauged = { ...caliber, fields: { ...caliber.fields, springGauge: 'Harrow, strength 14' } }
const harrow = { name: 'Harrow', measures: 'thickness', rows: [{ number: '14', mm: 0.12 }] }

test('a printed gauge is looked up in the tables of the file, beside what is stated, and only there', async () => {
  const withTables = (gauges: unknown[]) => fileOf({ ...libraryFile(gauged), springs, gauges })
  const { document } = await rankedOf(withTables([harrow]), '--caliber', '11-300')
  expect(document.specified).toMatchObject({
    thicknessMm: 0.105,
    gauge: 'Harrow, strength 14',
    gaugeReads: [
      {
        ...{ table: 'Harrow', measures: 'thickness', number: '14', mm: 0.12 },
        ...{ statedMm: 0.105, differenceMm: 0.015, agrees: false },
      },
    ],
    gaugeDoubts: [],
  })
  const { document: without } = await rankedOf(withTables([]), '--caliber', '11-300')
  expect(without.specified).not.toHaveProperty('gaugeReads')
  const { out } = await runCaptured('springs', withTables([harrow]), '--caliber', '11-300')
  expect(out).toContain('gauge as printed: Harrow, strength 14')
  expect(out).toContain('by your table Harrow: 0.12 mm; 0.015 mm more than the stated thickness of 0.105 mm.')
  const other = await runCaptured('springs', withTables([{ ...harrow, name: 'Quarle' }]), '--caliber', '11-300')
  expect(other.out).toContain('Not looked up. It names none of your gauge tables.')
})
