import { expect, test } from 'vitest'
import { nearReasons } from '../../../core/record/near-names.ts'
import { wordNearName } from '../../../core/wording/near-name.ts'

test('every reason is said, each in its own words', () => {
  expect(new Set(nearReasons.map(wordNearName)).size).toBe(nearReasons.length)
})
