import { expect, test } from 'vitest'
import { placeByKey } from '../../../../renderer/pages/table/grid-keys.ts'

const extent = { rows: 10, columns: 3, pageRows: 4 }

test.each([
  ['Enter', [2, 1], [3, 1]],
  ['ArrowDown', [9, 1], [9, 1]],
  ['Shift+Enter', [2, 1], [1, 1]],
  ['ArrowLeft', [2, 0], [2, 0]],
  ['ArrowRight', [2, 1], [2, 2]],
  ['Tab', [2, 1], [2, 2]],
  ['Tab', [2, 2], [3, 0]],
  ['Shift+Tab', [2, 0], [1, 2]],
  ['PageDown', [2, 1], [6, 1]],
  ['PageUp', [2, 1], [0, 1]],
  ['Home', [2, 2], [2, 0]],
  ['End', [2, 0], [2, 2]],
  ['Ctrl+Home', [5, 2], [0, 0]],
  ['Ctrl+End', [5, 0], [9, 2]],
] as const)('%s from %j leads to %j', (keys, [row, column], [toRow, toColumn]) => {
  expect(placeByKey(keys, { row, column }, extent)).toEqual({ row: toRow, column: toColumn })
})

test('Tab beyond the last cell and before the first leaves the grid, and other keys are not its own', () => {
  expect(placeByKey('Tab', { row: 9, column: 2 }, extent)).toBeUndefined()
  expect(placeByKey('Shift+Tab', { row: 0, column: 0 }, extent)).toBeUndefined()
  expect(placeByKey('Ctrl+S', { row: 0, column: 0 }, extent)).toBeUndefined()
})
