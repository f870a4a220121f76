import { expect, it } from 'vitest'
import { splitList, textOfList } from '../../../../renderer/pages/springs/split-list.ts'

it.each([
  ['semicolons with decimal commas', 'Nr;H;E\nA1;1,50;0,105\nA2;1,20;0,09'],
  ['tabs', 'Nr\tH\tE\nA1\t1,50\t0,105\nA2\t1,20\t0,09'],
  ['a mark before it all', '\ufeffNr;H;E\r\nA1;1,50;0,105\r\nA2;1,20;0,09\r\n'],
  ['quotations', '"Nr","H","E"\n"A1","1,50","0,105"\n"A2","1,20","0,09"'],
])('sets apart a list with %s', (_, text) => {
  expect(splitList(text)).toEqual([
    ['Nr', 'H', 'E'],
    ['A1', '1,50', '0,105'],
    ['A2', '1,20', '0,09'],
  ])
})

it('keeps titles and blank rows, so that rows are counted as a spreadsheet does', () => {
  expect(splitList('Springs, 1948, of all sizes\n\nNr;H;E\nA1;1,5;0,1\n;;\nA2;1,2;0,09').map((row) => row[0])).toEqual([
    'Springs, 1948, of all sizes',
    '',
    'Nr',
    'A1',
    '',
    'A2',
  ])
})

it('swallows no row after a lone inch mark', () => {
  expect(splitList('A1;"0.06;0.004\nA2;0.05;0.003\nA3;0.04;0.003')).toHaveLength(3)
})

it('reads a file of an older spreadsheet as well as one in UTF-8', () => {
  expect(textOfList(new TextEncoder().encode('Höhe').buffer)).toBe('Höhe')
  expect(textOfList(new Uint8Array([72, 0xf6, 104, 101]).buffer)).toBe('Höhe')
  expect(textOfList(new Uint8Array([0xff, 0xfe, 72, 0, 0xf6, 0]).buffer)).toContain('Hö')
})
