import { expect, test } from 'vitest'
import { readLibraryFile } from '../../../core/exchange/read-library-file.ts'
import { writeLibraryFile } from '../../../core/exchange/write-library-file.ts'

test('what is written ends in a line break and is read again the same', () => {
  const file = readLibraryFile('{"lignebook":1,"sources":[{"key":"hb1","title":"A handbook"}],"xNew":[1]}', 'book.json')
  const text = writeLibraryFile(file)
  expect(text.endsWith('}\n')).toBe(true)
  expect(readLibraryFile(text, 'book.json')).toEqual(file)
})
