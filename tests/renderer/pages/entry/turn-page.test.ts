import { expect, test } from 'vitest'
import { turnPage } from '../../../../renderer/pages/entry/turn-page.ts'

test.each([
  ['83', 1, '84'],
  ['84', -1, '83'],
  [' 9 ', 1, '10'],
  ['1', -1, '1'],
  ['44a', 1, '44a'],
  ['xii', 1, 'xii'],
  ['83-84', 1, '83-84'],
  ['', 1, ''],
] as const)('from page %j by %i one comes to %j', (page, by, turned) => expect(turnPage(page, by)).toBe(turned))
