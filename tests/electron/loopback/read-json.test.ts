import type { IncomingMessage } from 'node:http'
import { Readable } from 'node:stream'
import { expect, test } from 'vitest'
import { readJson } from '../../../electron/loopback/read-json.ts'

const body = (text: string, headers = {}) =>
  Object.assign(Readable.from([Buffer.from(text)]), { headers }) as unknown as IncomingMessage

test('a JSON body is read', async () => {
  expect(await readJson(body('{"a":[1]}'), 100)).toEqual({ ok: true, value: { a: [1] } })
})

test('a body that is longer than it may be is refused, whether or not it says so', async () => {
  expect(await readJson(body('[1,2,3]', { 'content-length': '7' }), 5)).toEqual({ ok: false, status: 413 })
  expect(await readJson(body('[1,2,3]'), 5)).toEqual({ ok: false, status: 413 })
})

test('what is not JSON is refused', async () => {
  expect(await readJson(body('{'), 100)).toEqual({ ok: false, status: 400 })
})
