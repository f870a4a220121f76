import { expect, test } from 'vitest'
import { readYear } from '../../../core/quantities/read-year.ts'

test('the form of print is read and what is no such value refused with a reason', () => {
  expect(readYear('c. 1926')).toMatchObject({ ok: true, quantity: { value: 1926 } })
  expect(readYear(' ')).toEqual({ ok: false, problem: { code: 'empty' } })
  expect(readYear('soon')).toEqual({ ok: false, problem: { code: 'unreadable', text: 'soon' } })
})
