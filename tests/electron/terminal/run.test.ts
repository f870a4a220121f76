import { execFile } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'
import { fileOf, goodTrain, libraryFile, newFolder, runCaptured, wrongTrain } from './run-captured.ts'

/** One sentence, on one line, and nothing on the other stream. */
const refused = async (...args: string[]): Promise<string> => {
  const { status, out, err } = await runCaptured(...args)
  expect({ args, status, out }).toEqual({ args, status: 2, out: '' })
  expect(err).toMatch(/^[^\n]+\.\n$/)
  expect(err).not.toMatch(/ at .*\.ts|Error:/)
  return err
}

test('an unknown command, option or nothing at all ends in status 2', async () => {
  expect(await refused('mend')).toContain("Unknown command 'mend'")
  expect(await refused('__proto__')).toContain('Unknown command')
  expect(await refused('prove', '--loud')).toContain('--loud')
  expect(await refused('prove', '--library')).toContain('library')
  expect((await runCaptured()).status).toBe(2)
})

test('help names every command, and each command has its own', async () => {
  const { status, out } = await runCaptured('--help')
  expect(status).toBe(0)
  for (const name of ['prove', 'fit', 'search', 'import', 'export']) {
    expect(out).toContain(`  ${name} `)
    expect((await runCaptured(name, '--help')).out).toMatch(new RegExp(`^${name} `))
  }
})

test('an unusable file is named with its place and field in one sentence', async () => {
  const unreadable = libraryFile(goodTrain, { ...goodTrain, fields: { ...goodTrain.fields, thirdWheel: 'many' } })
  for (const command of ['prove', 'fit']) {
    expect(await refused(command, join(newFolder(), 'none.json'))).toContain('none.json is not there')
    expect(await refused(command, newFolder())).toContain('is a folder')
    expect(await refused(command, fileOf('{"lignebook":1,'))).toContain('line 1')
    expect(await refused(command, fileOf({ lignebook: 1, calibers: [{ maker: 'Verrin' }] }))).toContain(
      'calibers[0].designation',
    )
    const sentence = await refused(command, fileOf(unreadable), '--json')
    expect(sentence).toContain('calibers.json, calibers[1].fields.thirdWheel: Third wheel')
    expect(await refused(command, '--library', join(newFolder(), 'none.sqlite'))).toContain('none.sqlite')
    expect(await refused(command, fileOf('not a library', 'x.sqlite'), '--library', 'x')).toContain('not both')
  }
  const foreign = fileOf('this is no library, only a text of some length', 'foreign.sqlite')
  expect(await refused('search', '--library', foreign, 'x')).toContain('not a Lignebook library')
  expect(await refused('search', '--library', foreign)).toContain('what to search for')
})

test('prove answers with the proofs as one document, and with status 1 where one disagrees', async () => {
  const good = await runCaptured('prove', fileOf(libraryFile(goodTrain)), '--json')
  expect([good.status, good.err]).toEqual([0, ''])
  const { calibers } = JSON.parse(good.out)
  expect(calibers).toMatchObject([{ maker: 'Verrin', designation: '17-220' }])
  const proof = calibers[0].proofs.find((one: { proof: string }) => one.proof === 'beat-rate-follows-train')
  expect(proof).toMatchObject({ outcome: 'agrees', stated: 18000, found: 18000 })
  expect(Object.keys(proof).sort()).toEqual(
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
    ].sort(),
  )
  const wrong = await runCaptured('prove', fileOf(libraryFile(goodTrain, wrongTrain)))
  expect(wrong.status).toBe(1)
  expect(wrong.out).toMatch(/Verrin 17-221\n.*≠ disagrees +beat-rate-follows-train/s)
})

test('one caliber can be named, by designation or with its maker', async () => {
  const file = fileOf(libraryFile(goodTrain, wrongTrain))
  expect((await runCaptured('prove', file, '--caliber', '17-220')).status).toBe(0)
  expect((await runCaptured('prove', file, '--caliber', 'verrin 17-221')).status).toBe(1)
  expect(await refused('prove', file, '--caliber', 'none')).toContain('no caliber none')
})

test('fit answers with every figure, null where it is not known', async () => {
  const spring = {
    barrelInsideMm: 16,
    barrelArborMm: 5,
    springThicknessMm: 0.18,
    springLengthMm: 480,
    barrelDepthMm: 2.2,
    springHeightMm: 2.1,
  }
  const file = fileOf(libraryFile({ ...goodTrain, fields: { ...goodTrain.fields, ...spring } }, goodTrain))
  const { status, out } = await runCaptured('fit', file, '--json')
  expect(status).toBe(0)
  const [known, unknown] = JSON.parse(out).fits
  expect(known).toMatchObject({ hoursPerTurn: 8, heightClearanceMm: 0.1 })
  expect(known.fill).toBeCloseTo((480 * 0.18) / ((Math.PI / 4) * (16 ** 2 - 5 ** 2)), 3)
  expect(unknown).toMatchObject({ turns: null, fill: null, heightClearanceMm: null })
  expect(Object.keys(unknown)).toEqual(Object.keys(known))
  const bare = { maker: 'Verrin', designation: 'bare' }
  expect((await runCaptured('fit', fileOf(libraryFile(bare)))).status).toBe(1)
})

test('import, search, prove and export work on one library, and a dry run begins none', async () => {
  const library = join(newFolder(), 'library.sqlite')
  const file = fileOf(libraryFile(goodTrain, wrongTrain))
  const trial = await runCaptured('import', file, '--library', library, '--dry-run', '--json')
  expect(JSON.parse(trial.out)).toMatchObject({ added: 2 })
  expect(existsSync(library)).toBe(false)
  expect(await runCaptured('import', file, '--library', library)).toMatchObject({
    status: 0,
    out: '2 calibers added.\n',
  })
  const again = await runCaptured('import', file, '--library', library, '--json')
  expect(JSON.parse(again.out)).toEqual({ added: 0, updated: 0, unchanged: 2, refused: [], kept: [] })

  const found = await runCaptured('search', '--library', library, '17', '220', '--json')
  expect(found.status).toBe(0)
  expect(JSON.parse(found.out).calibers[0]).toEqual({
    maker: 'Verrin',
    designation: '17-220',
    why: 'The designation is 17-220.',
  })
  const none = await runCaptured('search', '--library', library, 'qqqqqqqq', '--json')
  expect([none.status, JSON.parse(none.out)]).toEqual([1, { calibers: [] }])

  expect((await runCaptured('prove', '--library', library)).status).toBe(1)
  expect((await runCaptured('prove', '--library', library, '--caliber', '17-220')).status).toBe(0)

  const target = join(newFolder(), 'out.json')
  expect((await runCaptured('export', target, '--library', library)).out).toContain('2 calibers written')
  const back = await runCaptured('import', target, '--library', library, '--json')
  expect(JSON.parse(back.out)).toMatchObject({ unchanged: 2 })
  expect(await refused('export', target, '--library', library, '--caliber', 'none')).toContain('no caliber none')
  expect(await refused('export', join(newFolder(), 'no', 'out.json'), '--library', library)).toContain(
    'cannot be written',
  )
})

test('what an import leaves out is counted and said; where nothing can be used no library is begun', async () => {
  const library = join(newFolder(), 'library.sqlite')
  const bad = { ...goodTrain, designation: 'bad', fields: { thirdWheel: 'many' } }
  const nothing = await runCaptured('import', fileOf(libraryFile(bad)), '--library', library, '--json')
  expect(nothing.status).toBe(2)
  expect(nothing.err).toMatch(/calibers\.json, calibers\[0\]\.fields\.thirdWheel: Third wheel[^\n]*\n$/)
  expect(existsSync(library)).toBe(false)
  const some = await runCaptured('import', fileOf(libraryFile(goodTrain, bad)), '--library', library, '--json')
  expect(some.status).toBe(1)
  expect(JSON.parse(some.out)).toMatchObject({ added: 1, refused: [{ path: 'calibers[1].fields.thirdWheel' }] })
  expect(await refused('import', fileOf('{', 'broken.json'), '--library', library)).toContain('broken.json')
  const table = fileOf('maker,designation\nVerrin,18-1\n', 'table.csv')
  expect((await runCaptured('import', table, '--library', library)).out).toBe('1 caliber added.\n')
})

test('as a program it prints one JSON document and gives its status', async () => {
  const call = promisify(execFile)
  const args = ['run', '-s', 'lignebook', '--', 'prove', fileOf(libraryFile(wrongTrain)), '--json']
  const ended = await call('npm', args).catch((error: { code: number; stdout: string; stderr: string }) => error)
  expect(ended).toMatchObject({ code: 1, stderr: '' })
  expect(JSON.parse(ended.stdout).calibers).toHaveLength(1)
})
