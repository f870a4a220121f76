import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { UnusableInput } from '../../../electron/terminal/command.ts'
import { readText } from '../../../electron/terminal/read-text.ts'
import { fileOf, newFolder } from './run-captured.ts'

test('a file is read as UTF-8', () => {
  expect(readText(fileOf('8¾‴ Räderwerk'))).toBe('8¾‴ Räderwerk')
})

test('a file that cannot be read is named, with the reason', () => {
  const latin = join(newFolder(), 'latin.csv')
  writeFileSync(latin, Buffer.from('R\xe4derwerk', 'latin1'))
  for (const [file, reason] of [
    [join(newFolder(), 'none.json'), 'is not there'],
    [newFolder(), 'is a folder'],
    [latin, 'not a text in UTF-8'],
  ] as const) {
    expect(() => readText(file)).toThrow(UnusableInput)
    expect(() => readText(file)).toThrow(`${file} is`)
    expect(() => readText(file)).toThrow(reason)
  }
})
