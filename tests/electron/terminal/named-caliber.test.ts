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
  expect(() => find('17')).toThrow('book.json has no caliber 17; it has Verrin 17-220, Verrin 17-221 and Dorn 17-221.')
  expect(() => find('Verrin')).toThrow('no caliber Verrin')
  expect(() => find('')).toThrow('no caliber without a name')
})

test('a name that is near one is told what is there', () => {
  for (const name of ['17220', '17-229', 'Verin 17-220', 'verrin17220'])
    expect(() => find(name)).toThrow(/^book\.json has no caliber [^;]+; it has .*Verrin 17-220/)
  expect(() => find('Verrin')).toThrow('no caliber Verrin; it has Verrin 17-220 and Verrin 17-221.')
  expect(() => find('44')).toThrow('no caliber 44; look at its designation again.')
  expect(() => find('')).toThrow('; look at its designation again.')
  const many = Array.from({ length: 9 }, (_, i) => ({ maker: 'Verrin', designation: `17-${i}` }))
  expect(() => namedCaliber('book.json', many, 'Verrin')).toThrow('it has Verrin 17-0, Verrin 17-1 and Verrin 17-2.')
})

test('a designation of two makers is refused with both named', () => {
  expect(() => find('17-221')).toThrow(UnusableInput)
  expect(() => find('17-221')).toThrow('book.json has 17-221 of Verrin and of Dorn; name the maker too.')
})

test('an unsigned caliber is not taken for the one that is meant', () => {
  const both = [{ maker: 'Verrin', designation: '9' }, ...calibers]
  expect(() => namedCaliber('book.json', both, '9')).toThrow('of Verrin and of no maker')
  expect(namedCaliber('book.json', both, 'Verrin 9')).toBe(both[0])
})

test('one name that stands twice is refused', () => {
  const twice = [...calibers, { maker: 'Verrin', designation: '17-220' }]
  expect(() => namedCaliber('book.json', twice, 'Verrin 17-220')).toThrow('has 2 calibers Verrin 17-220; give each')
  expect(() => namedCaliber('book.json', twice, '17-220')).toThrow('has 2 calibers 17-220; give each')
})
