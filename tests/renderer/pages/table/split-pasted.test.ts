import fc from 'fast-check'
import { expect, test } from 'vitest'
import { splitPasted } from '../../../../renderer/pages/table/split-pasted.ts'

test('tabs go before semicolons, and semicolons before commas', () => {
  expect(splitPasted('Cal.\tHöhe\n9-2\t4,2; 4,3')).toEqual([
    ['Cal.', 'Höhe'],
    ['9-2', '4,2; 4,3'],
  ])
  expect(splitPasted('Cal.;Höhe\r\n9-2;4,2\r\n')).toEqual([
    ['Cal.', 'Höhe'],
    ['9-2', '4,2'],
  ])
  expect(splitPasted('Cal.,Height\n9-2,"4,2"')).toEqual([
    ['Cal.', 'Height'],
    ['9-2', '4,2'],
  ])
})

test('blank rows are left out, a byte order mark and gaps around a cell too', () => {
  expect(splitPasted('\ufeffCal.\t Höhe \n\t\n\n9-2\t4,2\n')).toEqual([
    ['Cal.', 'Höhe'],
    ['9-2', '4,2'],
  ])
  expect(splitPasted(' \n')).toEqual([])
})

test('a lone inch mark at the front of a cell swallows no row', () => {
  expect(splitPasted('1\t" not closed\n2\t1\n3\t4')).toHaveLength(3)
})

test('lignes and inches after their figures stay', () => {
  expect(splitPasted("9-2\t8 3/4'''\t1\"")).toEqual([['9-2', "8 3/4'''", '1"']])
})

test('no text makes it throw', () => {
  fc.assert(fc.property(fc.string({ unit: 'grapheme' }), (text) => Array.isArray(splitPasted(text))))
})
