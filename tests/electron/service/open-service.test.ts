import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test, vi } from 'vitest'
import { openService } from '../../../electron/service/open-service.ts'

const options = { create: true, demoFolder: 'seed-data' }
const newPlace = () => join(mkdtempSync(join(tmpdir(), 'service-')), 'a', 'b', 'library.sqlite')

test('a library is begun where none is, its folder too, and answers until it is closed', async () => {
  const file = newPlace()
  const { dispatch, close } = await openService({ ...options, file })
  expect(await dispatch('library.status', {})).toMatchObject({ ok: true, value: { file, calibers: 0 } })
  expect(await dispatch('library.load-demo', {})).toMatchObject({ ok: true, value: { refused: [] } })
  await close()
  expect(existsSync(`${file}-wal`)).toBe(false)
})

test('where none may be begun, nothing is made', async () => {
  const file = newPlace()
  await expect(openService({ ...options, file, create: false })).rejects.toMatchObject({
    failure: { code: 'not-found' },
  })
  expect(existsSync(join(file, '..', '..'))).toBe(false)
})

test('a fault of our own is noted for us and told without its particulars', async () => {
  const noted = vi.spyOn(console, 'error').mockImplementation(() => {})
  const { dispatch, close } = await openService({ ...options, file: newPlace(), demoFolder: '/nowhere' })
  const answer = await dispatch('library.load-demo', {})
  await close()
  expect(answer).toEqual({ ok: false, failure: { code: 'internal', details: { call: 'library.load-demo' } } })
  expect(noted).toHaveBeenCalledWith('library.load-demo failed:', expect.objectContaining({ code: 'ENOENT' }))
  noted.mockRestore()
})

test('counts of an earlier version are made again while the library answers, and closing does not wait for all of them', async () => {
  const file = newPlace()
  const first = await openService({ ...options, file })
  await first.dispatch('library.load-demo', {})
  await first.close()
  const { dispatch, close } = await openService({ ...options, file, recount: true })
  expect(await dispatch('library.status', {})).toMatchObject({ ok: true, value: { disagreeing: 3 } })
  await close()
})
