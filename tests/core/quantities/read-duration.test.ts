import { expect, test } from 'vitest'
import { readDuration } from '../../../core/quantities/read-duration.ts'

test('the form of print is read and what is no such value refused with a reason', () => {
  expect(readDuration('1d 12h')).toMatchObject({ ok: true, quantity: { value: 36 } })
  expect(readDuration(' ')).toEqual({ ok: false, problem: { code: 'empty' } })
  expect(readDuration('soon')).toEqual({ ok: false, problem: { code: 'unreadable', text: 'soon' } })
})
