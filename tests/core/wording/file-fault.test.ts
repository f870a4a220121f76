import { expect, test } from 'vitest'
import { wordFileFault } from '../../../core/wording/file-fault.ts'

test('a file of a newer form and a wrong kind of value are told apart', () => {
  expect(wordFileFault({ code: 'newer-version', version: 2 })).toContain('form 2')
  expect(wordFileFault({ code: 'wrong-kind', expected: 'string' })).toBe('a text in quotation marks is expected here')
})
