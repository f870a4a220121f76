import { expect, test } from 'vitest'
import { answered, fileOf, goodTrain, libraryFile, runCaptured } from './run-captured.ts'

const spring = {
  barrelInsideMm: 16,
  barrelArborMm: 5,
  springThicknessMm: '0,18',
  springLengthMm: 480,
  barrelDepthMm: 2.2,
  springHeightMm: 2.1,
}
const sprung = { ...goodTrain, fields: { ...goodTrain.fields, ...spring } }
/** Barrel and spring alone, as for a movement of which no more is known. */
const springOnly = (more: object = {}) => ({ maker: '', designation: 'unsigned', fields: { ...spring, ...more } })
const figures = [
  'coilsDown',
  'coilsWound',
  'turns',
  'fill',
  'bestLengthMm',
  'mostTurns',
  'hoursPerTurn',
  'goingHours',
  'heightClearanceMm',
  'arborToThickness',
  'lengthToThickness',
]

interface Fits {
  readonly fits: readonly Readonly<Record<string, number | string | null>>[]
}
const fitOf = async (...calibers: unknown[]) => answered<Fits>('fit', fileOf(libraryFile(...calibers)))

test('fit answers with every figure of the contract, null where it is not known', async () => {
  const { status, document } = await fitOf(sprung, goodTrain)
  expect(status).toBe(0)
  const [known, unknown] = document.fits
  for (const one of document.fits) expect(Object.keys(one)).toEqual(['maker', 'designation', ...figures])
  expect(known).toMatchObject({ maker: 'Verrin', hoursPerTurn: 8, heightClearanceMm: 0.1 })
  expect(known?.fill).toBeCloseTo((480 * 0.18) / ((Math.PI / 4) * (16 ** 2 - 5 ** 2)), 9)
  expect(unknown).toMatchObject({ turns: null, fill: null, heightClearanceMm: null, hoursPerTurn: 8 })
})

test('barrel and spring alone are enough, without maker or train', async () => {
  const { status, document } = await fitOf(springOnly())
  expect(status).toBe(0)
  expect(document.fits).toMatchObject([{ maker: '', turns: expect.any(Number), hoursPerTurn: null, goingHours: null }])
})

test('a spring that cannot be got in has no coils, turns or hours, and status 1', async () => {
  const { status, document } = await fitOf(springOnly({ springLengthMm: 1100 }))
  expect(status).toBe(1)
  expect(document.fits).toMatchObject([{ coilsDown: null, coilsWound: null, turns: null, goingHours: null }])
  expect(document.fits[0]?.fill).toBeGreaterThan(1)
})

test('an arbor as large as the barrel, or a spring higher than it, is status 1', async () => {
  expect(await fitOf(springOnly({ barrelArborMm: 16 }))).toMatchObject({
    status: 1,
    document: { fits: [{ fill: null, mostTurns: null }] },
  })
  expect((await fitOf(springOnly({ springHeightMm: 2.3 }))).status).toBe(1)
})

test('where nothing at all is known the status is 1 and every figure null', async () => {
  const { status, document } = await fitOf({ maker: 'Verrin', designation: 'bare' })
  expect(status).toBe(1)
  expect(document.fits).toEqual([
    { maker: 'Verrin', designation: 'bare', ...Object.fromEntries(figures.map((key) => [key, null])) },
  ])
})

test('for a person the figures stand in a table', async () => {
  const { out } = await runCaptured('fit', fileOf(libraryFile(springOnly())))
  expect(out).toMatch(/Share of the free space +0\.48\n/)
  expect(out).toMatch(/Going, h +not known\n/)
})
