import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { backUp, lastBackup } from '../../../electron/store/backup.ts'
import { countCalibers, readCaliber } from '../../../electron/store/calibers.ts'
import { openLibrary } from '../../../electron/store/library.ts'
import { fullEntry } from '../../support/full-entry.ts'
import { entryOf, save, steadyClock, temporaryFolder, temporaryLibrary } from '../../support/temporary-library.ts'

test('a backup is whole, is named only when checked, and opens as a library', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, fullEntry())
  const folder = temporaryFolder()
  const copy = await backUp(library, join(folder, 'backup.sqlite'))
  expect(copy).toMatchObject({ calibers: 1, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) })
  expect(readdirSync(folder)).toEqual(['backup.sqlite'])
  // What is saved afterwards is not in it.
  await save(library, entryOf('Verrin', '17-221'))
  const opened = await openLibrary(copy.file, { create: false, now: steadyClock() })
  expect(await readCaliber(opened, id)).toEqual(fullEntry())
  expect(await countCalibers(opened)).toBe(1)
  await opened.close()
})

test('the library remembers when its last backup was made', async () => {
  const library = await temporaryLibrary()
  const folder = temporaryFolder()
  expect(await lastBackup(library)).toBeNull()
  await backUp(library, join(folder, 'first.sqlite'))
  const first = await lastBackup(library)
  await backUp(library, join(folder, 'second.sqlite'))
  expect(first).toMatch(/^2031-01-01T/)
  expect(Date.parse((await lastBackup(library)) ?? '')).toBeGreaterThan(Date.parse(first ?? ''))
})

test('a backup that fails is not remembered and leaves the former one as it was', async () => {
  const library = await temporaryLibrary()
  const folder = temporaryFolder()
  await expect(backUp(library, join(folder, 'no such folder', 'backup.sqlite'))).rejects.toThrow()
  expect(await lastBackup(library)).toBeNull()
  // Another kind of file stands where the copy would be written first.
  const target = join(folder, 'backup.sqlite')
  writeFileSync(target, 'the former backup')
  library.connection.exec('alter table caliber rename to elsewhere')
  await expect(backUp(library, target)).rejects.toThrow('caliber')
  expect(readFileSync(target, 'utf8')).toBe('the former backup')
  expect(readdirSync(folder)).toEqual(['backup.sqlite'])
  expect(await lastBackup(library)).toBeNull()
})
