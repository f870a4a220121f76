import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { libraryOf, withLibrary } from '../../../electron/terminal/with-library.ts'
import { fileOf, goodTrain, libraryFile, newFolder, refused } from './run-captured.ts'

const inputOf = (library: string | undefined, env: Record<string, string> = {}) => ({
  options: { library },
  words: [],
  io: { out: () => {}, err: () => {}, env },
})

test("the library that is named goes before the user's own", () => {
  const env = { LIGNEBOOK_LIBRARY: '/own.sqlite' }
  expect(libraryOf(inputOf('/named.sqlite', env))).toBe('/named.sqlite')
  expect(libraryOf(inputOf(undefined, env))).toBe('/own.sqlite')
})

test('a library is begun only where that is asked', async () => {
  const file = join(newFolder(), 'library.sqlite')
  await expect(withLibrary(inputOf(file), { create: false }, async () => {})).rejects.toMatchObject({
    failure: { code: 'not-found' },
  })
  expect(existsSync(file)).toBe(false)
  const { calibers } = await withLibrary(inputOf(file), { create: true }, (call) => call('library.status', {}))
  expect(calibers).toBe(0)
})

test('the library is closed whether the work is done or fails', async () => {
  const file = join(newFolder(), 'library.sqlite')
  const failing = withLibrary(inputOf(file), { create: true }, () => Promise.reject(new Error('the work failed')))
  await expect(failing).rejects.toThrow('the work failed')
  expect(existsSync(`${file}-wal`)).toBe(false)
  expect(await withLibrary(inputOf(file), { create: false }, async () => 'opened again')).toBe('opened again')
})

test('an option that names no file, or a place where none can be, is refused in one sentence', async () => {
  expect(await refused('search', '17', '--library', '')).toContain('after --library')
  expect(await refused('search', '17', '--library', newFolder())).toContain('is not a Lignebook library')
  const file = fileOf(libraryFile(goodTrain))
  expect(await refused('import', file, '--library', join(file, 'library.sqlite'))).toContain(
    'cannot be opened or begun',
  )
})
