import { describe, expect, test, vi } from 'vitest'
import { type CallName, contract, type Handlers } from '../../../core/api/contract.ts'
import { createDispatcher, writes } from '../../../core/api/dispatcher.ts'
import { LignebookError } from '../../../core/api/errors.ts'

const refuse = () => {
  throw new LignebookError('not-found', { id: 7 })
}
/** Handlers that refuse every call but the few under test. */
const handlers = (some: Partial<Handlers>): Handlers => ({
  ...(Object.fromEntries(Object.keys(contract).map((name) => [name, refuse])) as unknown as Handlers),
  ...some,
})

const dispatch = (some: Partial<Handlers>, report = vi.fn()) => createDispatcher(handlers(some), report)

test('an answer crosses as a plain value', async () => {
  const answer = await dispatch({ 'caliber.save': () => ({ id: 3 }) })('caliber.save', {
    caliberId: null,
    entry: {
      maker: 'Verrin',
      designation: '17-220',
      fields: {},
      jewels: [],
      lubrication: [],
      depths: [],
      parts: [],
      stripOrder: [],
    },
  })
  expect(answer).toEqual({ ok: true, value: { id: 3 } })
})

describe('a call that cannot be answered fails as data', () => {
  test.each(['no.such-call', 'constructor', '__proto__', 'toString', ''])('unknown name %j', async (name) => {
    expect(await dispatch({})(name, {})).toEqual({ ok: false, failure: { code: 'unknown-call', details: { name } } })
  })

  test('input that the contract refuses is named by place and never reaches the handler', async () => {
    const read = vi.fn(refuse)
    const answer = await dispatch({ 'caliber.read': read })('caliber.read', { id: -1 })
    expect(answer).toMatchObject({
      ok: false,
      failure: { code: 'bad-input', details: { call: 'caliber.read', where: 'id' } },
    })
    expect(read).not.toHaveBeenCalled()
  })

  test('a failure of our own crosses with its code and details', async () => {
    const answer = await dispatch({})('caliber.read', { id: 7 })
    expect(answer).toEqual({ ok: false, failure: { code: 'not-found', details: { id: 7 } } })
  })

  test('an unforeseen error is reported here and crosses without its text', async () => {
    const report = vi.fn()
    const trouble = new Error('/home/someone/secret')
    const answer = await dispatch({ 'caliber.read': () => Promise.reject(trouble) }, report)('caliber.read', { id: 7 })
    expect(answer).toEqual({ ok: false, failure: { code: 'internal', details: { call: 'caliber.read' } } })
    expect(report).toHaveBeenCalledWith('caliber.read', trouble)
  })

  test('an answer that breaks the contract does not cross', async () => {
    const wrong = { id: 'seven' } as unknown as { id: number }
    const answer = await dispatch({ 'caliber.save': () => wrong })('caliber.save', {
      caliberId: null,
      entry: {
        maker: '',
        designation: '',
        fields: {},
        jewels: [],
        lubrication: [],
        depths: [],
        parts: [],
        stripOrder: [],
      },
    })
    expect(answer).toMatchObject({ ok: false, failure: { code: 'internal' } })
  })
})

test('the calls that change the library are told from those that read it', () => {
  for (const name of Object.keys(contract)) expect(writes(name)).toBe(contract[name as CallName].access === 'write')
  expect(writes('constructor')).toBe(false)
})
