import { expect, test } from 'vitest'
import { printJson } from '../../../electron/terminal/command.ts'

test('a document is printed once, whole, and ends its line', () => {
  const printed: string[] = []
  printJson({ out: (text) => printed.push(text), err: () => {}, env: {} }, { fits: [{ turns: null, note: 'a\nb' }] })
  expect(printed).toHaveLength(1)
  expect(printed[0]?.endsWith('}\n')).toBe(true)
  expect(JSON.parse(printed[0] ?? '')).toEqual({ fits: [{ turns: null, note: 'a\nb' }] })
})
