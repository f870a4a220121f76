import { expect, test } from 'vitest'
import { createClient } from '../../../core/api/client.ts'
import { LignebookError } from '../../../core/api/errors.ts'

test('a client hands back the value of an answer', async () => {
  const call = createClient(async () => ({ ok: true, value: { text: '{}' } }))
  expect(await call('exchange.export', {})).toEqual({ text: '{}' })
})

test('a client throws the failure of an answer', async () => {
  const call = createClient(async () => ({ ok: false, failure: { code: 'not-found', details: { id: 4 } } }))
  const error: unknown = await call('caliber.read', { id: 4 }).catch((thrown: unknown) => thrown)
  expect(error).toBeInstanceOf(LignebookError)
  expect((error as LignebookError).failure).toEqual({ code: 'not-found', details: { id: 4 } })
})

test('a host cannot hand the page a value that the contract does not know', async () => {
  const call = createClient(async () => ({ ok: true, value: { text: 7, more: true } }))
  await expect(call('exchange.export', {})).rejects.toThrow()
})
