import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  isOwnUrl,
  permissionGranted,
  resolveAsset,
  schemePrivileges,
  senderOk,
  webPreferences,
} from '../../../electron/shell/policy.ts'
import { files } from '../loopback/test-host.ts'

test('the web preferences are exactly these', () => {
  expect(webPreferences('/preload.cjs')).toEqual({
    preload: '/preload.cjs',
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    nodeIntegrationInSubFrames: false,
    contextIsolation: true,
    sandbox: true,
    webviewTag: false,
    navigateOnDragDrop: false,
    spellcheck: false,
  })
})

test('the scheme is standard and secure and may not pass round the page policy', () => {
  expect(schemePrivileges).toEqual({ standard: true, secure: true, supportFetchAPI: true })
})

const foreign = [
  'https://page/',
  'file:///page/',
  'data:text/html,x',
  'javascript:alert(1)',
  'blob:lignebook://page/1',
  'about:blank',
  'lignebook://page.evil/',
  'lignebook://evil/page/',
  'lignebook://user@page/',
  'lignebook://page:80/',
  'lignebook:page/',
  'lignebookx://page/',
  'app://page/',
  '',
  'null',
]

test('only our own page is our own, and no address that resembles it', () => {
  expect(isOwnUrl('lignebook://page/')).toBe(true)
  expect(isOwnUrl('lignebook://page/#/caliber/3')).toBe(true)
  for (const url of foreign) expect([url, isOwnUrl(url)]).toEqual([url, false])
  fc.assert(fc.property(fc.webUrl(), (url) => !isOwnUrl(url)))
})

test('a file is found by its exact path among the page files, and never by any other', () => {
  expect(resolveAsset('lignebook://page/', files)?.type).toBe('text/html; charset=utf-8')
  expect(resolveAsset('lignebook://page/assets/page.js', files)).toBeDefined()
  for (const path of [
    '..%2f..%2fpackage.json',
    '..%5c..%5cpackage.json',
    'assets',
    'assets/page.js?x',
    '__proto__',
    '%00',
  ]) {
    expect([path, resolveAsset(`lignebook://page/${path}`, files)]).toEqual([path, undefined])
  }
  for (const url of foreign) expect(resolveAsset(url, files)).toBeUndefined()
  fc.assert(
    fc.property(fc.string(), (path) => {
      const found = resolveAsset(`lignebook://page/${path}`, files)
      return found === undefined || [...files.values()].includes(found)
    }),
  )
})

test('a call is taken only from the top frame of our own page', () => {
  expect(senderOk({ url: 'lignebook://page/', parent: null })).toBe(true)
  expect(senderOk(null)).toBe(false)
  expect(senderOk({ url: 'lignebook://page/', parent: {} })).toBe(false)
  for (const url of foreign) expect(senderOk({ url, parent: null })).toBe(false)
})

test('every permission that Electron has a name for is denied, and any other', () => {
  const declared = readFileSync('node_modules/electron/electron.d.ts', 'utf8')
  const start = declared.indexOf('setPermissionRequestHandler(handler:')
  const names = [...declared.slice(start, start + 4000).matchAll(/'([a-zA-Z-]+)'/g)].map(([, name]) => name ?? '')
  expect(names.length).toBeGreaterThan(10)
  for (const name of [...names, 'hid', 'usb', 'serial', 'anything-new']) expect(permissionGranted(name)).toBe(false)
})
