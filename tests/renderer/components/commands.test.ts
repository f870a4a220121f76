import { expect, test } from 'vitest'
import { keysOf } from '../../../renderer/components/commands.ts'

const pressed = (key: string, held: Partial<Parameters<typeof keysOf>[0]> = {}) =>
  keysOf({ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false, ...held })

test.each([
  [pressed('e'), 'E'],
  [pressed('?', { shiftKey: true }), '?'],
  [pressed('k', { ctrlKey: true }), 'Ctrl+K'],
  [pressed('k', { metaKey: true }), 'Ctrl+K'],
  [pressed('Z', { ctrlKey: true, shiftKey: true }), 'Ctrl+Shift+Z'],
  [pressed('+', { ctrlKey: true, shiftKey: true }), 'Ctrl++'],
  [pressed('Escape'), 'Escape'],
])('%s is how %s is named', (named, expected) => {
  expect(named).toBe(expected)
})
