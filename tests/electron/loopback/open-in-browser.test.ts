import { chmodSync, existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { openInBrowser } from '../../../electron/loopback/open-in-browser.ts'

const address = 'http://127.0.0.1:4321/#code=a-b_c&x=$HOME'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'browser-'))
  vi.stubEnv('PATH', folder)
  vi.stubEnv('DISPLAY', ':0')
  vi.stubEnv('WAYLAND_DISPLAY', undefined)
})
afterEach(() => vi.unstubAllEnvs())

/** Puts a program in the opener's place that writes down what it was given. */
const opener = (): string => {
  const said = join(folder, 'said')
  const program = join(folder, process.platform === 'darwin' ? 'open' : 'xdg-open')
  writeFileSync(program, `#!/bin/sh\nprintf '%s' "$*" > '${said}'\n`)
  chmodSync(program, 0o755)
  return said
}

test.skipIf(process.platform === 'win32')('the address reaches the opener as it is, past any shell', async () => {
  const said = opener()
  openInBrowser(address)
  await vi.waitFor(() => expect(existsSync(said) && readFileSync(said, 'utf8')).toBe(address), 5000)
})

test.skipIf(process.platform !== 'linux')('without a screen nothing is started', async () => {
  const said = opener()
  vi.stubEnv('DISPLAY', undefined)
  openInBrowser(address)
  await new Promise((done) => setTimeout(done, 200))
  expect(existsSync(said)).toBe(false)
})

test('without an opener nothing breaks', async () => {
  const faults: unknown[] = []
  const note = (fault: unknown) => faults.push(fault)
  process.on('uncaughtException', note)
  openInBrowser(address)
  await new Promise((done) => setTimeout(done, 200))
  process.off('uncaughtException', note)
  expect(faults).toEqual([])
})
