import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, test } from 'vitest'
import { answered, fileOf, goodTrain, libraryOf, newFolder, refused, runCaptured, wrongTrain } from './run-captured.ts'

const newFile = () => join(newFolder(), 'out.json')

test('the library is written as a file that comes in again unchanged, newer keys included', async () => {
  const newer = {
    ...goodTrain,
    rating: { stars: 3 },
    fields: { ...goodTrain.fields, alarm: { hours: 12 }, sealed: null },
  }
  const library = await libraryOf(newer, wrongTrain)
  const file = newFile()
  expect(await answered('export', file, '--library', library)).toEqual({ status: 0, document: { file, calibers: 2 } })
  expect(JSON.parse(readFileSync(file, 'utf8')).calibers[0]).toMatchObject({
    rating: { stars: 3 },
    fields: { alarm: { hours: 12 }, sealed: null },
  })
  expect((await answered('import', file, '--library', library)).document).toMatchObject({ unchanged: 2 })
  expect(readdirSync(dirname(file))).toEqual(['out.json'])
})

test('one caliber can be named', async () => {
  const library = await libraryOf(goodTrain, wrongTrain, { ...goodTrain, maker: 'Dorn' })
  const file = newFile()
  const { out } = await runCaptured('export', file, '--library', library, '--caliber', 'Dorn 17-220')
  expect(out).toBe(`1 caliber written to ${file}.\n`)
  expect(JSON.parse(readFileSync(file, 'utf8')).calibers).toMatchObject([{ maker: 'Dorn' }])
  const none = newFile()
  expect(await refused('export', none, '--library', library, '--caliber', 'none')).toContain('no caliber none')
  expect(await refused('export', none, '--library', library, '--caliber', '17-220')).toContain('name the maker too')
  expect(existsSync(none)).toBe(false)
})

test('a file that cannot be written leaves nothing, and what stood there stays', async () => {
  const library = await libraryOf(goodTrain)
  const nowhere = join(newFolder(), 'no', 'out.json')
  expect(await refused('export', nowhere, '--library', library)).toContain('cannot be written')
  const folder = newFolder()
  expect(await refused('export', folder, '--library', library)).toContain(folder)
  expect([existsSync(`${folder}.unfinished`), readdirSync(folder)]).toEqual([false, []])
  const old = fileOf('an older export', 'old.json')
  expect(await refused('export', old, '--library', `${library}.none`)).toContain('is not there')
  expect(readFileSync(old, 'utf8')).toBe('an older export')
  expect(await refused('export', '--library', library)).toContain('Name one file')
})

test('an export is never written over a library, its own or another', async () => {
  const [library, other] = [await libraryOf(goodTrain), await libraryOf(wrongTrain)]
  const before = readFileSync(other)
  expect(await refused('export', library, '--library', library)).toContain('would be lost')
  expect(await refused('export', other, '--library', library)).toContain('name another file')
  expect(readFileSync(other).equals(before)).toBe(true)
  expect((await answered('search', '17-220', '--library', library)).status).toBe(0)
})
