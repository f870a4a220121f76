import { expect, test } from 'vitest'
import { nextMaker } from '../../../../renderer/pages/entry/next-maker.ts'

test('a maker left for the next caliber is taken once', () => {
  nextMaker.leave('Hesselrode')
  expect([nextMaker.take(), nextMaker.take()]).toEqual(['Hesselrode', ''])
})
