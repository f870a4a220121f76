import { beforeEach, expect, test } from 'vitest'
import { pageHeaders } from '../../../electron/page/page-policy.ts'
import { registerPageScheme, servePageFiles } from '../../../electron/shell/page-protocol.ts'
import { recorder, session } from '../../support/fake-electron.ts'
import { files } from '../loopback/test-host.ts'

beforeEach(() => recorder.reset())

const ask = async (url: string, method = 'GET') =>
  session.defaultSession.protocolHandler?.({ url, method } as Request) ?? new Response(null, { status: 500 })

test('the scheme is declared standard and secure, and nothing more', () => {
  registerPageScheme()
  expect(recorder.schemes).toEqual([
    [{ scheme: 'lignebook', privileges: { standard: true, secure: true, supportFetchAPI: true } }],
  ])
})

test('each page file is served with its type and the policy', async () => {
  servePageFiles(session.defaultSession as never, files)
  const script = await ask('lignebook://page/assets/page.js')
  expect([script.status, await script.text()]).toEqual([200, 'let page'])
  expect(script.headers.get('content-type')).toBe('text/javascript; charset=utf-8')
  for (const [name, value] of Object.entries(pageHeaders)) expect(script.headers.get(name)).toBe(value)
})

test('anything else is not there, and says so under the same policy', async () => {
  servePageFiles(session.defaultSession as never, files)
  for (const [url, method] of [
    ['lignebook://page/library.sqlite', 'GET'],
    ['lignebook://page/', 'POST'],
    ['lignebook://page.evil/', 'GET'],
  ] as const) {
    const answer = await ask(url, method)
    expect([url, answer.status, await answer.text()]).toEqual([url, 404, ''])
    for (const [name, value] of Object.entries(pageHeaders)) expect(answer.headers.get(name)).toBe(value)
  }
})
