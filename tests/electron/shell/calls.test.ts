import { beforeEach, expect, test } from 'vitest'
import { answerCalls } from '../../../electron/shell/calls.ts'
import { recorder } from '../../support/fake-electron.ts'

const own = { url: 'lignebook://page/', parent: null }
const forbidden = { ok: false, failure: { code: 'forbidden', details: {} } }

let reached: unknown[][]
beforeEach(() => {
  recorder.reset()
  reached = []
  answerCalls(async (...call) => {
    reached.push(call)
    return { ok: true, value: 'answer' }
  })
})
const ask = (senderFrame: unknown, ...args: unknown[]) =>
  recorder.handled.get('lignebook.call')?.({ senderFrame }, ...args)

test('there is one channel, and it answers the top frame of our own page', async () => {
  expect([...recorder.handled.keys()]).toEqual(['lignebook.call'])
  expect(await ask(own, 'calibers.page', { offset: 0 })).toEqual({ ok: true, value: 'answer' })
  expect(reached).toEqual([['calibers.page', { offset: 0 }]])
})

test('no other frame reaches the library, nor a call that is not one name and one input', async () => {
  for (const frame of [null, { ...own, parent: {} }, { ...own, url: 'https://example.org/' }]) {
    expect(await ask(frame, 'library.status', {})).toEqual(forbidden)
  }
  expect(await ask(own, 'library.status', {}, 'more')).toEqual(forbidden)
  expect(await ask(own, 7, {})).toEqual(forbidden)
  expect(reached).toEqual([])
})
