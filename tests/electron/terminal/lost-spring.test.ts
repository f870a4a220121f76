import { expect, test } from 'vitest'
import { answered, fileOf, libraryFile, refused, runCaptured } from './run-captured.ts'

const barrel = (more: object = {}) => ({
  maker: 'Verrin',
  designation: '11-300',
  fields: { barrelInsideMm: 11.5, barrelArborMm: 3.6, barrelDepthMm: 1.6, ...more },
})

interface Estimates {
  readonly estimates: readonly (Readonly<Record<string, unknown>> & {
    readonly exact: Readonly<Record<string, number>>
    readonly remarks: readonly string[]
  })[]
}

test('lost-spring answers with the estimate, its exact figures and what it rests on', async () => {
  const { status, document } = await answered<Estimates>('lost-spring', fileOf(libraryFile(barrel())), '--turns', '7.5')
  expect(status).toBe(0)
  const [estimate] = document.estimates
  expect(estimate).toMatchObject({ heightMm: 1.5, thicknessMm: 0.13 })
  expect(estimate?.exact.thicknessMm).toBeCloseTo(0.12945, 5)
  expect(estimate?.lengthMm).toBeCloseTo(360.35, 2)
  expect(estimate?.turns).toBeCloseTo(7.468, 3)
  expect(estimate?.remarks[0]).toBe('For 7.5 theoretical turns, as given.')
})

test('it goes by the stated hours where no turns are given', async () => {
  const file = fileOf(libraryFile(barrel({ barrelTeeth: 80, centrePinion: 10, goingHours: '36 h' })))
  const { document } = await answered<Estimates>('lost-spring', file)
  expect(document.estimates[0]?.remarks[0]).toContain('6 theoretical turns')
})

test('a barrel that is not stated gives no estimate and status 1', async () => {
  const file = fileOf(libraryFile(barrel(), { maker: 'Verrin', designation: 'unknown', fields: {} }))
  const { status, document } = await answered<Estimates>('lost-spring', file, '--turns', '7')
  expect(status).toBe(1)
  expect(document.estimates).toHaveLength(1)
  const prose = await runCaptured('lost-spring', file, '--turns', '7')
  expect(prose.out).toContain('The inside of the barrel is not stated')
  expect(prose.out).toContain('An estimate is not a specification')
})

test('sizes and turns that cannot be are refused in one sentence', async () => {
  const file = fileOf(libraryFile(barrel({ barrelArborMm: 11.5 })))
  expect(await refused('lost-spring', file, '--turns', '7')).toMatch(
    /calibers\.json, calibers\[0\]\.fields\.barrelInsideMm: A barrel arbor of 11\.5 mm leaves no room .*; measure both again/,
  )
  expect(await refused('lost-spring', file, '--turns', '1,234')).toContain(
    '--turns: "1,234" can be read as 1.234 or 1234',
  )
  for (const turns of ['0x7', '1e1', '', '200'])
    expect(await refused('lost-spring', file, '--turns', turns)).toContain('up to 100')
  expect(await refused('lost-spring', file, '--turns', 'seven')).toContain('--turns seven')
  expect(await refused('lost-spring', file, '--turns', '0')).toContain('--turns 0')
})

test('turns are read as a handbook prints them', async () => {
  const file = fileOf(libraryFile(barrel()))
  for (const turns of ['7.5', '7,5', '7 1/2'])
    expect((await answered<Estimates>('lost-spring', file, '--turns', turns)).document.estimates[0]?.remarks[0]).toBe(
      'For 7.5 theoretical turns, as given.',
    )
})
