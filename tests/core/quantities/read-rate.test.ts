import { expect, test } from 'vitest'
import { readRate } from '../../../core/quantities/read-rate.ts'

test('the form of print is read and what is no such value refused with a reason', () => {
  expect(readRate('5/s')).toMatchObject({ ok: true, quantity: { value: 18000 } })
  expect(readRate(' ')).toEqual({ ok: false, problem: { code: 'empty' } })
  expect(readRate('soon')).toEqual({ ok: false, problem: { code: 'unreadable', text: 'soon' } })
})
