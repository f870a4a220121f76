import { expect, test } from 'vitest'
import { createClient } from '../../../core/api/client.ts'

test('a caller is handed the value of a good answer', async () => {
  const call = createClient(async () => ({ ok: true, value: { hits: [] } }))
  expect(await call('calibers.search', { words: 'x' })).toEqual({ hits: [] })
})

test('a failure is thrown with its code and details', async () => {
  const call = createClient(async () => ({ ok: false, failure: { code: 'disk-full', details: {} } }))
  await expect(call('draft.discard', { caliberId: null })).rejects.toMatchObject({
    failure: { code: 'disk-full', details: {} },
  })
})

test('an answer of another shape is not taken', async () => {
  const call = createClient(async () => ({ ok: true, value: { hits: 'all' } }))
  await expect(call('calibers.search', { words: 'x' })).rejects.toThrow()
})
