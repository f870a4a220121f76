import { existsSync, mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { startShell } from '../../../electron/shell/start-shell.ts'
import { app, recorder, session } from '../../support/fake-electron.ts'

let folder: string
beforeEach(() => {
  recorder.reset()
  folder = mkdtempSync(join(tmpdir(), 'shell-'))
  mkdirSync(join(folder, 'out', 'page'), { recursive: true })
  writeFileSync(join(folder, 'out', 'page', 'index.html'), '<!doctype html>page')
  app.appPath = folder
  vi.stubEnv('LIGNEBOOK_LIBRARY', join(folder, 'library.sqlite'))
})
afterEach(async () => {
  app.emit('will-quit', { preventDefault: () => {} })
  await vi.waitFor(() => expect(existsSync(join(folder, 'library.sqlite-wal'))).toBe(false))
  vi.unstubAllEnvs()
})

test('sandbox, scheme and the single instance are settled before the app is ready, permissions before a window', async () => {
  await startShell()
  expect(recorder.steps).toEqual([
    'sandbox',
    'scheme',
    'single instance',
    'ready',
    'deny permissions',
    'handle lignebook',
    'window',
    'load lignebook://page/',
  ])
})

test('the window has its guard and its preload, and the built page and the library behind it', async () => {
  await startShell()
  const [window] = recorder.windows
  expect(window?.webContents.windowOpenHandler).not.toBeNull()
  expect(window?.options.webPreferences).toMatchObject({ preload: join(folder, 'out', 'preload', 'preload.cjs') })
  const page = await session.defaultSession.protocolHandler?.({ url: 'lignebook://page/', method: 'GET' } as Request)
  expect(await page?.text()).toBe('<!doctype html>page')
  const call = recorder.handled.get('lignebook.call')
  const senderFrame = { url: 'lignebook://page/', parent: null }
  const none = { ok: true, value: { total: 0, rows: [] } }
  expect(await call?.({ senderFrame }, 'calibers.page', { offset: 0, limit: 10 })).toEqual(none)
  expect(await call?.({ senderFrame }, '__proto__', {})).toMatchObject({ failure: { code: 'unknown-call' } })
})

test('a second start quits before it opens the library, and brings the first to the front', async () => {
  recorder.firstInstance = false
  await startShell()
  expect(recorder.steps.at(-1)).toBe('quit')
  expect(existsSync(join(folder, 'library.sqlite'))).toBe(false)
  recorder.firstInstance = true
  await startShell()
  app.emit('second-instance')
  expect(recorder.windows.map(({ focused }) => focused)).toEqual([1])
})

test('the app goes only after the library is closed', async () => {
  await startShell()
  const event = { preventDefault: vi.fn() }
  app.emit('will-quit', event)
  expect(event.preventDefault).toHaveBeenCalledOnce()
  await vi.waitFor(() => expect(recorder.steps.at(-1)).toBe('quit'))
  expect(existsSync(join(folder, 'library.sqlite-wal'))).toBe(false)
})

test('a library that cannot be opened ends in one sentence and no window', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => {})
  writeFileSync(join(folder, 'library.sqlite'), 'this is no library at all, only a text of some length')
  await startShell()
  expect(recorder.windows).toEqual([])
  expect(recorder.exits).toEqual([2])
  expect(recorder.errorBoxes[0]?.text).toMatch(/not a Lignebook library/)
})
