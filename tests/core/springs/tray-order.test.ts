import fc from 'fast-check'
import { expect, test } from 'vitest'
import { trayOrder } from '../../../core/springs/tray-order.ts'

const spring = (supplierRef: string, tray?: string) => ({
  supplierRef,
  heightMm: 1.5,
  thicknessMm: 0.1,
  ...(tray === undefined ? {} : { tray }),
})

test('springs on no list come first, then tray by tray, each by number as a person counts', () => {
  const springs = [
    spring('10a', 'Drawer 12'),
    spring('2b', 'Drawer 12'),
    spring('5', 'drawer 3'),
    spring('11'),
    spring('9'),
  ]
  expect(trayOrder(springs).map(({ tray = '', supplierRef }) => `${tray} ${supplierRef}`)).toEqual([
    ' 9',
    ' 11',
    'drawer 3 5',
    'Drawer 12 2b',
    'Drawer 12 10a',
  ])
})

test('the order is the same whatever order the springs come in, and none is lost', () => {
  const refs = fc.uniqueArray(fc.string({ minLength: 1, maxLength: 6 }), { maxLength: 30 })
  fc.assert(
    fc.property(
      refs.chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
      ([one, other]) => {
        const ordered = trayOrder(one.map((ref) => spring(ref)))
        expect(trayOrder(other.map((ref) => spring(ref)))).toEqual(ordered)
        expect(ordered).toHaveLength(one.length)
      },
    ),
  )
})
