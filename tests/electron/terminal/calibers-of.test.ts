import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import {
  answered,
  fileOf,
  goodTrain,
  libraryFile,
  libraryOf,
  newFolder,
  refused,
  runCaptured,
  unreadable,
  wrongTrain,
} from './run-captured.ts'

/** The commands that work on the calibers of a file or a library. */
const commands = ['prove', 'fit']

test('an unusable file is named with its place and field in one sentence', async () => {
  for (const command of commands) {
    expect(await refused(command, join(newFolder(), 'none.json'))).toContain('none.json is not there')
    expect(await refused(command, fileOf('{"lignebook":1,'), '--json')).toMatch(/calibers\.json .*line 1, position 16/)
    expect(await refused(command, fileOf({ lignebook: 2 }))).toContain('newer')
    expect(await refused(command, fileOf({ lignebook: 1, calibers: [{ maker: 'Verrin' }] }))).toContain(
      'calibers[0].designation',
    )
    const noReading = { ...goodTrain, fields: { thirdWheel: { teeth: 75 } } }
    expect(await refused(command, fileOf(libraryFile(goodTrain, noReading)))).toContain('calibers[1].fields.thirdWheel')
  }
})

test('a value that cannot be read is named by file, path and field, and nothing else is said', async () => {
  for (const command of commands) {
    const sentence = await refused(command, fileOf(libraryFile(goodTrain, unreadable)), '--json')
    expect(sentence).toMatch(/calibers\.json, calibers\[1\]\.fields\.thirdWheel: Third wheel.*many/)
    const line = { ...goodTrain, jewels: [{ place: 'balance', kind: 'hole', count: 'some' }] }
    expect(await refused(command, fileOf(libraryFile(line)))).toContain('calibers[0].jewels[0].count: Jewels')
  }
})

test('one file or one library is worked on, and a library that is not there is not begun', async () => {
  const library = join(newFolder(), 'none.sqlite')
  for (const command of commands) {
    expect(await refused(command, 'a.json', 'b.json')).toContain('b.json')
    expect(await refused(command, 'a.json', '--library', library)).toContain('not both')
    expect(await refused(command, '--library', library)).toContain('none.sqlite is not there')
  }
  expect(existsSync(library)).toBe(false)
})

test('one caliber can be named, in a file and in a library; the others are not looked at', async () => {
  const file = fileOf(libraryFile(goodTrain, wrongTrain, unreadable))
  expect((await runCaptured('prove', file, '--caliber', '17-220')).status).toBe(0)
  expect((await runCaptured('prove', file, '--caliber', 'verrin 17-221')).status).toBe(1)
  expect(await refused('prove', file, '--caliber', 'none')).toContain('calibers.json has no caliber none')
  const dorn = { ...goodTrain, maker: 'Dorn' }
  expect(await refused('fit', fileOf(libraryFile(goodTrain, dorn)), '--caliber', '17-220', '--json')).toContain(
    'of Verrin and of Dorn',
  )
  const library = await libraryOf(goodTrain, wrongTrain)
  const { document } = await answered<{ calibers: unknown[] }>('prove', '--library', library, '--caliber', '17-221')
  expect(document.calibers).toMatchObject([{ maker: 'Verrin', designation: '17-221' }])
  expect(await refused('prove', '--library', library, '--caliber', 'none')).toContain('no caliber none')
})

test('an unsigned caliber is answered for; one without a designation is not', async () => {
  for (const command of commands) {
    expect((await runCaptured(command, fileOf(libraryFile({ ...goodTrain, maker: '' })))).status).toBe(0)
    expect(await refused(command, fileOf(libraryFile({ ...goodTrain, designation: ' ' })))).toContain(
      'calibers[0].designation',
    )
  }
})

test('what a newer version wrote is passed over', async () => {
  const newer = { ...goodTrain, rating: 3, fields: { ...goodTrain.fields, alarm: { hours: 12 }, sealed: true } }
  const { status } = await answered('prove', fileOf({ ...libraryFile(newer), shelf: ['new'] }))
  expect(status).toBe(0)
})

test('a variant is proved over its base, wherever in the file that stands', async () => {
  const variant = { maker: 'Verrin', designation: '17-222', fields: { basedOn: '17-220', fourthWheel: '70' } }
  const file = fileOf(libraryFile(variant, goodTrain))
  const { document } = await answered<{ calibers: { proofs: { proof: string; outcome: string }[] }[] }>(
    'prove',
    file,
    '--caliber',
    '17-222',
  )
  const outcomes = Object.fromEntries(document.calibers[0]?.proofs.map(({ proof, outcome }) => [proof, outcome]) ?? [])
  expect(outcomes).toMatchObject({ 'variant-keeps-its-base': 'doubtful', 'beat-rate-follows-train': 'disagrees' })
})
