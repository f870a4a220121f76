import fc from 'fast-check'
import { expect, test } from 'vitest'
import { repeatedKey } from '../../../core/exchange/repeated-key.ts'

test('a key that stands twice in one object is found with its path', () => {
  expect(repeatedKey('{"a":1,"a":2}')).toEqual(['a'])
  expect(repeatedKey('{"x":[0,{"y":{"k":"v","l":[1,2],"k":{}}}]}')).toEqual(['x', 1, 'y', 'k'])
  expect(repeatedKey('[{"a":1},[],{"b":1 , "b" : 1}]')).toEqual([2, 'b'])
  expect(repeatedKey('{"\\u0061":1,"a":2}')).toEqual(['a'])
})

test('one key in several objects, and texts that look like keys, are nothing', () => {
  expect(repeatedKey('[{"a":1},{"a":{"a":["a","a"]}}]')).toBeNull()
  expect(repeatedKey('{"a":"b\\"a","b":"\\\\","c":"{\\"b\\":1,\\"b\\":2}"}')).toBeNull()
  expect(repeatedKey('3')).toBeNull()
})

test('what was written from an object never has a key twice', () => {
  fc.assert(
    fc.property(fc.json(), (json) => {
      const written = JSON.stringify(JSON.parse(json))
      return repeatedKey(written) === null
    }),
  )
})

test('a text of many megabytes is passed over at once', () => {
  expect(repeatedKey(`{"data":"${'A'.repeat(30_000_000)}","data":""}`)).toEqual(['data'])
})
