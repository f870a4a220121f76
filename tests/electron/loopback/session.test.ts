import { expect, test } from 'vitest'
import { createSession } from '../../../electron/loopback/session.ts'
import { startTestHost } from './test-host.ts'

test('a code opens the page once', () => {
  const session = createSession(() => 0)
  const code = session.newCode()
  const token = session.exchange(code)
  expect(token).toMatch(/^[\w-]{43}$/)
  expect(session.exchange(code)).toBeNull()
  expect(session.accepts(token ?? '')).toBe(true)
})

test('a code is of no use after a minute', () => {
  let now = 0
  const session = createSession(() => now)
  const code = session.newCode()
  now = 60_001
  expect(session.exchange(code)).toBeNull()
})

test('a fresh code puts an end to the one before it', () => {
  const session = createSession(() => 0)
  const first = session.newCode()
  const second = session.newCode()
  expect(session.exchange(first)).toBeNull()
  expect(session.exchange(second)).not.toBeNull()
})

test('after too many wrong tokens even the right one is withdrawn, until a fresh code is made', () => {
  const session = createSession(() => 0)
  const token = session.exchange(session.newCode()) ?? ''
  for (let i = 0; i < 32; i++) session.accepts('wrong')
  expect(session.accepts(token)).toBe(false)
  const fresh = session.exchange(session.newCode()) ?? ''
  expect(session.accepts(fresh)).toBe(true)
  expect(session.accepts(token)).toBe(false)
})

test('wrong codes are counted as wrong tokens are', () => {
  const session = createSession(() => 0)
  const code = session.newCode()
  for (let i = 0; i < 32; i++) session.exchange('wrong')
  expect(session.exchange(code)).toBeNull()
})

test('over the wire the code is exchanged only by our own page, by POST and as JSON', async () => {
  const host = await startTestHost()
  const ask = (headers: Record<string, string>, body: unknown) => host.post('/session', headers, JSON.stringify(body))
  const json = { 'content-type': 'application/json' }
  const own = { ...json, origin: host.origin }
  const code = host.code()
  expect((await ask(json, { code })).status).toBe(403)
  expect((await ask({ ...json, origin: 'http://evil.test' }, { code })).status).toBe(403)
  expect((await ask({ origin: host.origin, 'content-type': 'text/plain' }, { code })).status).toBe(415)
  expect((await ask(own, { code, more: 1 })).status).toBe(400)
  expect((await ask(own, { code: 'x'.repeat(2000) })).status).toBe(413)
  expect((await ask(own, { code: 'wrong' })).status).toBe(403)
  expect((await ask(own, { code })).status).toBe(200)
  expect((await ask(own, { code })).status).toBe(403)
  const late = host.code()
  host.wait(60_001)
  expect((await ask(own, { code: late })).status).toBe(403)
  await host.close()
})
