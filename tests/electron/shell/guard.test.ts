import { beforeEach, expect, test, vi } from 'vitest'
import { guardEveryPage, guardSession } from '../../../electron/shell/guard.ts'
import { BrowserWindow, recorder, session } from '../../support/fake-electron.ts'

beforeEach(() => recorder.reset())

const prevented = (emitter: { emit: (name: string, ...args: unknown[]) => number }, name: string, details = {}) => {
  const event = { preventDefault: vi.fn(), ...details }
  const heard = emitter.emit(name, event)
  return heard > 0 && event.preventDefault.mock.calls.length > 0
}

test('a page goes nowhere, opens nothing and attaches nothing', () => {
  guardEveryPage()
  const { webContents } = new BrowserWindow({ webPreferences: {} })
  expect(webContents.windowOpenHandler?.({ url: 'https://example.org' })).toEqual({ action: 'deny' })
  for (const name of ['will-navigate', 'will-frame-navigate', 'will-redirect']) {
    for (const url of ['https://example.org/', 'file:///etc/passwd', 'data:text/html,x', 'lignebook://page.evil/']) {
      expect([name, url, prevented(webContents, name, { url })]).toEqual([name, url, true])
    }
    expect(prevented(webContents, name, { url: 'lignebook://page/' })).toBe(false)
  }
  expect(prevented(webContents, 'will-attach-webview')).toBe(true)
})

test('permissions, devices and downloads are denied', () => {
  guardSession(session.defaultSession as never)
  const { permissionRequest, permissionCheck, devicePermission, emitter } = session.defaultSession
  const answers: boolean[] = []
  permissionRequest?.(null, 'media', (granted) => answers.push(granted))
  expect(answers).toEqual([false])
  expect(permissionCheck?.(null, 'clipboard-read')).toBe(false)
  expect(devicePermission?.({})).toBe(false)
  expect(prevented(emitter, 'will-download')).toBe(true)
})
