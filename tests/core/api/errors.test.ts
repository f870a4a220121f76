import { expect, test } from 'vitest'
import { failureSchema, LignebookError } from '../../../core/api/errors.ts'

test('an error carries its failure as data', () => {
  const error = new LignebookError('same-name', { maker: 'Verrin', designation: '17-220' })
  expect(failureSchema.parse(error.failure)).toEqual(error.failure)
  expect(error.message).toBe('same-name')
  expect(error.name).toBe('LignebookError')
})

test('a failure without details has none', () => {
  expect(new LignebookError('disk-full').failure.details).toEqual({})
  expect(failureSchema.parse({ code: 'disk-full' }).details).toEqual({})
})
