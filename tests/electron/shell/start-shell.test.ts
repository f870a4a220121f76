import { existsSync, mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { pageHeaders } from '../../../electron/page/page-policy.ts'
import { webPreferences } from '../../../electron/shell/policy.ts'
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

const prevented = (emitter: { emit: (name: string, ...args: unknown[]) => number }, name: string, details = {}) => {
  const event = { preventDefault: vi.fn(), ...details }
  const heard = emitter.emit(name, event)
  return heard > 0 && event.preventDefault.mock.calls.length > 0
}

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
  expect(recorder.schemes).toEqual([
    [{ scheme: 'lignebook', privileges: { standard: true, secure: true, supportFetchAPI: true } }],
  ])
})

test('the window is locked down in full', async () => {
  await startShell()
  const preload = join(folder, 'out', 'preload', 'preload.cjs')
  expect(recorder.windows.map(({ options }) => options.webPreferences)).toEqual([webPreferences(preload)])
})

test('a second start quits before it opens the library', async () => {
  recorder.firstInstance = false
  await startShell()
  expect(recorder.steps.at(-1)).toBe('quit')
  expect(existsSync(join(folder, 'library.sqlite'))).toBe(false)
})

test('the page goes nowhere, opens nothing and attaches nothing', async () => {
  await startShell()
  const contents = recorder.windows[0]?.webContents
  if (!contents) throw new Error('no window')
  expect(contents.windowOpenHandler?.({ url: 'https://example.org' })).toEqual({ action: 'deny' })
  for (const name of ['will-navigate', 'will-frame-navigate', 'will-redirect']) {
    for (const url of ['https://example.org/', 'file:///etc/passwd', 'data:text/html,x', 'lignebook://page.evil/']) {
      expect([name, url, prevented(contents, name, { url })]).toEqual([name, url, true])
    }
    expect(prevented(contents, name, { url: 'lignebook://page/' })).toBe(false)
  }
  expect(prevented(contents, 'will-attach-webview')).toBe(true)
})

test('permissions, devices and downloads are denied', async () => {
  await startShell()
  const { permissionRequest, permissionCheck, devicePermission, emitter } = session.defaultSession
  const answers: boolean[] = []
  permissionRequest?.(null, 'media', (granted) => answers.push(granted))
  expect(answers).toEqual([false])
  expect(permissionCheck?.(null, 'clipboard-read')).toBe(false)
  expect(devicePermission?.({})).toBe(false)
  expect(prevented(emitter, 'will-download')).toBe(true)
})

test('the page is served with the policy, and nothing else is', async () => {
  await startShell()
  const ask = async (url: string, method = 'GET') =>
    session.defaultSession.protocolHandler?.({ url, method } as Request) ?? new Response(null, { status: 500 })
  const page = await ask('lignebook://page/')
  expect(await page.text()).toBe('<!doctype html>page')
  for (const [name, value] of Object.entries(pageHeaders)) expect(page.headers.get(name)).toBe(value)
  expect((await ask('lignebook://page/library.sqlite')).status).toBe(404)
  expect((await ask('lignebook://page/', 'POST')).status).toBe(404)
})

test('there is one channel, and it answers the top frame of our own page alone', async () => {
  await startShell()
  expect([...recorder.handled.keys()]).toEqual(['lignebook.call'])
  const handler = recorder.handled.get('lignebook.call')
  const own = { url: 'lignebook://page/', parent: null }
  const ask = (senderFrame: unknown, ...args: unknown[]) => handler?.({ senderFrame }, ...args)
  expect(await ask(own, 'calibers.page', { offset: 0, limit: 10 })).toEqual({ ok: true, value: { total: 0, rows: [] } })
  const forbidden = { ok: false, failure: { code: 'forbidden', details: {} } }
  for (const frame of [null, { ...own, parent: {} }, { ...own, url: 'https://example.org/' }]) {
    expect(await ask(frame, 'library.status', {})).toEqual(forbidden)
  }
  expect(await ask(own, 'library.status', {}, 'more')).toEqual(forbidden)
  expect(await ask(own, 7, {})).toEqual(forbidden)
  expect(await ask(own, '__proto__', {})).toMatchObject({ ok: false, failure: { code: 'unknown-call' } })
})

test('a library that cannot be opened ends in one sentence and no window', async () => {
  vi.spyOn(console, 'error').mockImplementation(() => {})
  writeFileSync(join(folder, 'library.sqlite'), 'this is no library at all, only a text of some length')
  await startShell()
  expect(recorder.windows).toEqual([])
  expect(recorder.exits).toEqual([2])
  expect(recorder.errorBoxes[0]?.text).toMatch(/not a Lignebook library/)
})
