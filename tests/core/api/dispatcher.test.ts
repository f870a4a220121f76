import { expect, test } from 'vitest'
import { contract, type Handlers } from '../../../core/api/contract.ts'
import { createDispatcher, writes } from '../../../core/api/dispatcher.ts'
import { LignebookError } from '../../../core/api/errors.ts'

/** Handlers of which only the ones under test do anything. */
const only = (some: Partial<Handlers>): Handlers =>
  new Proxy(some, {
    get: (target, name) =>
      Reflect.get(target, name) ??
      (() => {
        throw new Error(`no handler ${String(name)}`)
      }),
  }) as Handlers

const reported: unknown[] = []
const over = (some: Partial<Handlers>) => createDispatcher(only(some), (name, error) => reported.push([name, error]))

test('the input is parsed at the door, with its defaults filled in', async () => {
  const seen: unknown[] = []
  const dispatch = over({
    'calibers.search': (input) => {
      seen.push(input)
      return { hits: [] }
    },
  })
  expect(await dispatch('calibers.search', { words: 'x' })).toEqual({ ok: true, value: { hits: [] } })
  expect(seen).toEqual([{ words: 'x', limit: 50 }])
})

test.each([null, undefined, 7, 'x', [], { id: 0 }, { id: '1' }, { id: 1, more: 1 }, { id: 1.5 }])(
  'input %j of caliber.read is refused before the handler',
  async (input) => {
    expect(await over({})('caliber.read', input)).toMatchObject({ ok: false, failure: { code: 'bad-input' } })
  },
)

test('an input that hides a prototype changes no prototype', async () => {
  const input: unknown = JSON.parse('{"id":1,"__proto__":{"polluted":true}}')
  await over({})('caliber.read', input)
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined()
})

test.each(['nowhere', '__proto__', 'constructor', 'toString', ''])('there is no call %j', async (name) => {
  expect(await over({})(name, {})).toEqual({ ok: false, failure: { code: 'unknown-call', details: { name } } })
  expect(writes(name)).toBe(false)
})

test('a failure made on purpose crosses with its details, any other without its text', async () => {
  const dispatch = over({
    'caliber.read': ({ id }) => {
      throw id === 1 ? new LignebookError('not-found', { what: 'This caliber' }) : new Error('select * from secret')
    },
  })
  expect(await dispatch('caliber.read', { id: 1 })).toEqual({
    ok: false,
    failure: { code: 'not-found', details: { what: 'This caliber' } },
  })
  const answer = await dispatch('caliber.read', { id: 2 })
  expect(answer).toEqual({ ok: false, failure: { code: 'internal', details: { call: 'caliber.read' } } })
  expect(reported.at(-1)).toMatchObject(['caliber.read', { message: 'select * from secret' }])
})

test('an answer that the contract does not allow never leaves', async () => {
  const dispatch = over({ 'caliber.remove': () => ({ more: 1 }) as never })
  expect(await dispatch('caliber.remove', { id: 1 })).toMatchObject({ ok: false, failure: { code: 'internal' } })
})

test('a call writes exactly where its row says so', () => {
  for (const [name, { access }] of Object.entries(contract)) expect(writes(name)).toBe(access === 'write')
})
