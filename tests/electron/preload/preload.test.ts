import { expect, test } from 'vitest'
import { recorder } from '../../support/fake-electron.ts'

test('the page is given one function, and it hands on a name and an input and nothing else', async () => {
  await import('../../../electron/preload/preload.ts')
  expect([...recorder.exposed.keys()]).toEqual(['lignebook'])
  const bridge = recorder.exposed.get('lignebook') as { call: (...args: unknown[]) => Promise<unknown> }
  expect(Object.keys(bridge)).toEqual(['call'])
  await bridge.call('caliber.read', { id: 1 }, 'more')
  expect(recorder.invoked).toEqual([['lignebook.call', 'caliber.read', { id: 1 }]])
})
