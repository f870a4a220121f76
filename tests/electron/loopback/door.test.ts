import type { IncomingMessage } from 'node:http'
import fc from 'fast-check'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { bearerOf, refuseBody, refuseCaller, refuseHost, refuseTarget } from '../../../electron/loopback/door.ts'
import { rawRequest, statusOf } from './raw-request.ts'
import { startTestHost, type TestHost } from './test-host.ts'

let host: TestHost
beforeAll(async () => {
  host = await startTestHost()
})
afterAll(() => host.close())

const withHeaders = (...rawHeaders: string[]) => ({ rawHeaders }) as unknown as IncomingMessage
const address = '127.0.0.1:4711'

test('a Host is let in exactly when it is ours byte for byte', () => {
  expect(refuseHost(withHeaders('Host', address), address)).toBeNull()
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        fc.constantFrom(
          'localhost:4711',
          '127.0.0.1',
          '127.0.0.1:4712',
          'a.127.0.0.1:4711',
          '127.0.0.1:4711.',
          '[::1]:4711',
        ),
        fc.string().map((tail) => address + tail),
        fc.string().map((head) => head + address),
      ),
      (text) => (refuseHost(withHeaders('Host', text), address) === null) === (text === address),
    ),
  )
})

// The requests that Node's own server lets through or takes the first half of; measured on Node 24.
test.each([
  ['HTTP/1.1 without Host', 'GET / HTTP/1.1\n\n'],
  ['HTTP/1.0 without Host', 'GET / HTTP/1.0\n\n'],
  ['two Hosts, ours first', 'GET / HTTP/1.1\nHost: OWN\nHost: evil.test\n\n'],
  ['two Hosts, ours last', 'GET / HTTP/1.1\nHost: evil.test\nHost: OWN\n\n'],
  ['two equal Hosts', 'GET / HTTP/1.1\nHost: OWN\nHost: OWN\n\n'],
  ['an empty Host', 'GET / HTTP/1.1\nHost:\n\n'],
  ['a rebound name', 'GET / HTTP/1.1\nHost: evil.test:PORT\n\n'],
  ['localhost', 'GET / HTTP/1.1\nHost: localhost:PORT\n\n'],
  ['localhost with a dot', 'GET / HTTP/1.1\nHost: localhost.:PORT\n\n'],
  ['localhost6', 'GET / HTTP/1.1\nHost: localhost6:PORT\n\n'],
  ['a user in the Host', 'GET / HTTP/1.1\nHost: user@OWN\n\n'],
  ['a wrong port', 'GET / HTTP/1.1\nHost: 127.0.0.1:1\n\n'],
  ['no port', 'GET / HTTP/1.1\nHost: 127.0.0.1\n\n'],
  ['0.0.0.0', 'GET / HTTP/1.1\nHost: 0.0.0.0:PORT\n\n'],
  ['an octal address', 'GET / HTTP/1.1\nHost: 0177.0.0.1:PORT\n\n'],
  ['a short address', 'GET / HTTP/1.1\nHost: 127.1:PORT\n\n'],
  ['IPv6', 'GET / HTTP/1.1\nHost: [::1]:PORT\n\n'],
  ['a full address as target', 'GET http://evil.test/ HTTP/1.1\nHost: OWN\n\n'],
  ['our own full address as target', 'GET http://OWN/ HTTP/1.1\nHost: OWN\n\n'],
  ['two slashes', 'GET //evil.test/ HTTP/1.1\nHost: OWN\n\n'],
  ['slash and backslash', 'GET /\\evil.test/ HTTP/1.1\nHost: OWN\n\n'],
  ['a star', 'OPTIONS * HTTP/1.1\nHost: OWN\n\n'],
  ['a proxy request', 'CONNECT evil.test:80 HTTP/1.1\nHost: OWN\n\n'],
  ['a rebound upgrade', 'GET / HTTP/1.1\nHost: evil.test\nConnection: Upgrade\nUpgrade: websocket\n\n'],
])('%s is refused before the page itself is served', async (_, request) => {
  const own = `127.0.0.1:${host.port}`
  const answer = await rawRequest(host.port, request.replaceAll('OWN', own).replaceAll('PORT', String(host.port)))
  expect(statusOf(answer)).not.toBe(200)
  expect(answer).not.toContain('doctype')
})

test('a target is a path with one slash before it', () => {
  expect(refuseTarget('/')).toBeNull()
  expect(refuseTarget('/assets/page.js')).toBeNull()
  for (const bad of ['', '*', '//evil', '/\\evil', 'http://evil/', undefined]) expect(refuseTarget(bad)).not.toBeNull()
})

test('a caller is refused for a second Origin even where one of the two is ours', () => {
  const origin = 'http://127.0.0.1:4711'
  expect(refuseCaller(withHeaders('Origin', origin), origin, true)).toBeNull()
  expect(refuseCaller(withHeaders('Origin', origin, 'Origin', origin), origin, true)).not.toBeNull()
  expect(refuseCaller(withHeaders(), origin, false)).toBeNull()
  expect(refuseCaller(withHeaders(), origin, true)).not.toBeNull()
})

test('only JSON bodies and only one well-formed bearer token are taken', () => {
  expect(refuseBody(withHeaders('Content-Type', 'application/json; charset=utf-8'))).toBeNull()
  expect(refuseBody(withHeaders())).not.toBeNull()
  expect(refuseBody(withHeaders('Content-Type', 'application/json', 'Content-Type', 'application/json'))).not.toBeNull()
  expect(bearerOf(withHeaders('Authorization', 'Bearer abc-_9'))).toBe('abc-_9')
  for (const bad of ['abc', 'Basic abc', 'Bearer a b', `Bearer ${'a'.repeat(201)}`, 'Bearer ']) {
    expect(bearerOf(withHeaders('Authorization', bad))).toBeNull()
  }
})
