import { expect, test } from 'vitest'
import { UnusableInput } from '../../../electron/terminal/command.ts'
import { namedCaliber } from '../../../electron/terminal/named-caliber.ts'

const calibers = [
  { maker: 'Verrin', designation: '17-220' },
  { maker: 'Verrin', designation: '17-221' },
  { maker: 'Dorn', designation: '17-221' },
  { maker: '', designation: '9' },
]
const find = (name: string) => namedCaliber('book.json', calibers, name)

test('a caliber is known by its designation, or by maker and designation', () => {
  for (const name of ['17-220', ' 17-220 ', 'Verrin 17-220', 'verrin  17-220']) expect(find(name)).toBe(calibers[0])
  expect(find('Dorn 17-221')).toBe(calibers[2])
  expect(find('9')).toBe(calibers[3])
})

test('a name that stands for none is refused with the place', () => {
  expect(() => find('17')).toThrow(UnusableInput)
  expect(() => find('17')).toThrow('book.json has no caliber 17.')
  expect(() => find('Verrin')).toThrow('no caliber Verrin')
  expect(() => find('')).toThrow('no caliber without a name')
})

test('a designation of two makers is refused with both named', () => {
  expect(() => find('17-221')).toThrow(UnusableInput)
  expect(() => find('17-221')).toThrow('book.json has 17-221 of Verrin and of Dorn. Name the maker too.')
})

test('an unsigned caliber is not taken for the one that is meant', () => {
  const both = [{ maker: 'Verrin', designation: '9' }, ...calibers]
  expect(() => namedCaliber('book.json', both, '9')).toThrow('of Verrin and of no maker')
  expect(namedCaliber('book.json', both, 'Verrin 9')).toBe(both[0])
})

test('one name that stands twice is refused', () => {
  const twice = [...calibers, { maker: 'Verrin', designation: '17-220' }]
  expect(() => namedCaliber('book.json', twice, 'Verrin 17-220')).toThrow('has 2 calibers Verrin 17-220')
})
