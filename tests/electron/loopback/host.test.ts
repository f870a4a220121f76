import { connect } from 'node:net'
import { networkInterfaces } from 'node:os'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { pageHeaders } from '../../../electron/page/page-policy.ts'
import { rawRequest, statusOf } from './raw-request.ts'
import { startTestHost, type TestHost } from './test-host.ts'

let host: TestHost
let token: string
beforeEach(async () => {
  host = await startTestHost()
  token = await host.token()
})
afterEach(() => host.close())

const json = { 'content-type': 'application/json' }
const own = () => ({ ...json, origin: host.origin, authorization: `Bearer ${token}` })

test('the page and its files are served by exact path, with every header of the policy', async () => {
  const page = await fetch(`${host.origin}/`)
  expect(await page.text()).toBe('<!doctype html>page')
  expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
  for (const [name, value] of Object.entries(pageHeaders)) expect(page.headers.get(name)).toBe(value)
  expect(page.headers.get('access-control-allow-origin')).toBeNull()
  expect((await fetch(`${host.origin}/assets/page.js`)).status).toBe(200)
})

test('nothing outside the list of page files is served, however the path is written', async () => {
  const paths = [
    '/package.json',
    '/../package.json',
    '/..%2fpackage.json',
    '/..%5cpackage.json',
    '/assets/../../package.json',
    '/assets/%2e%2e/page.js',
    '/assets//page.js',
    '/assets/page.js/',
    '/assets/page.js%00',
    '/assets/page.js?x',
    '/constructor',
    '/__proto__',
  ]
  for (const path of paths) {
    const answer = await rawRequest(host.port, `GET ${path} HTTP/1.1\nHost: 127.0.0.1:${host.port}\n\n`)
    expect([path, statusOf(answer)]).toEqual([path, 404])
  }
})

test('a call with the token reaches the dispatcher, and its answer comes back', async () => {
  const answer = await host.post('/api/caliber.read', own(), '{"id":1}')
  expect(await answer.json()).toEqual({ ok: true, value: { secret: 'data' } })
  expect(host.calls).toEqual([{ name: 'caliber.read', input: { id: 1 } }])
})

test('every answer, refusals too, carries the policy and grants no other origin anything', async () => {
  const answers = [
    await host.post('/api/caliber.read', json, '{}'),
    await fetch(`${host.origin}/nowhere`),
    await host.post('/api/caliber.read', own(), '{"id":1}'),
  ]
  for (const answer of answers) {
    for (const [name, value] of Object.entries(pageHeaders)) expect(answer.headers.get(name)).toBe(value)
    expect([...answer.headers.keys()].filter((name) => name.startsWith('access-control'))).toEqual([])
  }
})

test.each([
  ['no token', (headers: Record<string, string>) => ({ ...headers, authorization: '' }), 403],
  ['a wrong token', (headers: Record<string, string>) => ({ ...headers, authorization: 'Bearer wrong' }), 403],
  [
    'a token sent as a cookie',
    ({ authorization, ...rest }: Record<string, string>) => ({ ...rest, cookie: `${authorization}` }),
    403,
  ],
  [
    'another port of this machine',
    (headers: Record<string, string>) => ({ ...headers, origin: 'http://127.0.0.1:1' }),
    403,
  ],
  [
    'localhost as origin',
    (headers: Record<string, string>) => ({ ...headers, origin: `http://localhost:${host.port}` }),
    403,
  ],
  [
    'an origin that begins with ours',
    (headers: Record<string, string>) => ({ ...headers, origin: `${host.origin}.evil.test` }),
    403,
  ],
  ['the null origin', (headers: Record<string, string>) => ({ ...headers, origin: 'null' }), 403],
  ['no origin', ({ origin: _, ...rest }: Record<string, string>) => rest, 403],
  ['a same-site caller', (headers: Record<string, string>) => ({ ...headers, 'sec-fetch-site': 'same-site' }), 403],
  ['a cross-site caller', (headers: Record<string, string>) => ({ ...headers, 'sec-fetch-site': 'cross-site' }), 403],
  ['a typed address', (headers: Record<string, string>) => ({ ...headers, 'sec-fetch-site': 'none' }), 403],
  ['a form', (headers: Record<string, string>) => ({ ...headers, 'content-type': 'text/plain' }), 415],
  [
    'a form with fields',
    (headers: Record<string, string>) => ({ ...headers, 'content-type': 'application/x-www-form-urlencoded' }),
    415,
  ],
  [
    'JSON in another dress',
    (headers: Record<string, string>) => ({ ...headers, 'content-type': 'text/plain; application/json' }),
    415,
  ],
])('a write from %s is refused and reaches nothing', async (_, change, status) => {
  // Undici drops what a browser may not set, so the request is written out by hand.
  const headers = Object.entries(change(own())).map(([name, value]) => `${name}: ${value}`)
  const answer = await rawRequest(
    host.port,
    `POST /api/caliber.remove HTTP/1.1\nHost: 127.0.0.1:${host.port}\nContent-Length: 8\nConnection: close\n${headers.join('\n')}\n\n{"id":1}`,
  )
  expect(statusOf(answer)).toBe(status)
  expect(answer).not.toContain('secret')
  expect(host.calls).toEqual([])
})

test('a read needs the token too, and a foreign origin or site spoils it', async () => {
  const read = (extra: string) =>
    rawRequest(
      host.port,
      `POST /api/caliber.read HTTP/1.1\nHost: 127.0.0.1:${host.port}\nContent-Type: application/json\nContent-Length: 8\nConnection: close\n${extra}\n\n{"id":1}`,
    )
  expect(statusOf(await read('X: y'))).toBe(403)
  expect(statusOf(await read(`Authorization: Bearer ${token}\nOrigin: http://evil.test`))).toBe(403)
  expect(statusOf(await read(`Authorization: Bearer ${token}\nSec-Fetch-Site: cross-site`))).toBe(403)
  expect(statusOf(await read(`Authorization: Bearer ${token}\nAuthorization: Bearer ${token}`))).toBe(403)
  expect(host.calls).toEqual([])
  expect(statusOf(await read(`Authorization: Bearer ${token}\nSec-Fetch-Site: same-origin`))).toBe(200)
})

test('asking first (OPTIONS) and every other method is refused', async () => {
  for (const method of ['OPTIONS', 'PUT', 'DELETE', 'PATCH', 'TRACE']) {
    const answer = await rawRequest(
      host.port,
      `${method} /api/caliber.read HTTP/1.1\nHost: 127.0.0.1:${host.port}\nOrigin: http://evil.test\nConnection: close\n\n`,
    )
    expect([method, statusOf(answer)]).toEqual([method, 403])
    expect(answer.toLowerCase()).not.toContain('access-control')
  }
})

test('a call by GET is no call, so that a link or a picture can do nothing', async () => {
  const answer = await fetch(`${host.origin}/api/library.status`, { headers: own() })
  expect(answer.status).toBe(404)
  expect(host.calls).toEqual([])
})

test('an upgrade to another protocol is refused whoever asks', async () => {
  const answer = await rawRequest(
    host.port,
    `GET / HTTP/1.1\nHost: 127.0.0.1:${host.port}\nOrigin: ${host.origin}\nConnection: Upgrade\nUpgrade: websocket\nSec-WebSocket-Version: 13\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\n\n`,
  )
  expect(statusOf(answer)).toBe(403)
})

test('a body over the limit, broken JSON and broken UTF-8 are refused before any call', async () => {
  const large = await rawRequest(
    host.port,
    `POST /api/caliber.read HTTP/1.1\nHost: 127.0.0.1:${host.port}\nAuthorization: Bearer ${token}\nContent-Type: application/json\nContent-Length: 99999999\n\n{`,
  )
  expect(statusOf(large)).toBe(413)
  expect((await host.post('/api/caliber.read', own(), '{"id":')).status).toBe(400)
  const bytes = new Uint8Array([0x22, 0xff, 0x22])
  const broken = await fetch(`${host.origin}/api/caliber.read`, { method: 'POST', headers: own(), body: bytes })
  expect(broken.status).toBe(400)
  expect(host.calls).toEqual([])
})

test('it listens on 127.0.0.1 and on no other address of this machine', async () => {
  const others = Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .map(({ address }) => address)
    .filter((address) => address !== '127.0.0.1' && !address.startsWith('fe80'))
  for (const address of others) {
    const reached = await new Promise((done) => {
      const socket = connect({ host: address, port: host.port })
      socket.setTimeout(1000, () => done(false))
      socket.on('connect', () => done(true))
      socket.on('error', () => done(false))
    })
    expect([address, reached]).toEqual([address, false])
  }
})

test('the log names path and status, and never a token, code or query', async () => {
  const code = host.code()
  await host.post('/session', { ...json, origin: host.origin }, JSON.stringify({ code }))
  await fetch(`${host.origin}/nowhere?token=${token}`, { headers: { referer: `${host.origin}/?${token}` } })
  await host.post('/api/caliber.read', own(), '{"id":1}')
  await host.post('/api/caliber.read', { ...own(), authorization: 'Bearer wrong' }, '{"id":1}')
  const log = host.logged.join('\n')
  expect(log).toContain('GET /nowhere 404')
  for (const secret of [token, code, 'wrong', '?']) expect(log).not.toContain(secret)
})
