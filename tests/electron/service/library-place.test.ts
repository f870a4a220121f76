import { expect, test } from 'vitest'
import { libraryPlace } from '../../../electron/service/library-place.ts'

test("the user's own library stands where each system keeps data", () => {
  expect(libraryPlace({}, 'linux', '/home/a')).toBe('/home/a/.local/share/Lignebook/library.sqlite')
  expect(libraryPlace({ XDG_DATA_HOME: '/data' }, 'linux', '/home/a')).toBe('/data/Lignebook/library.sqlite')
  expect(libraryPlace({}, 'darwin', '/Users/a')).toBe('/Users/a/Library/Application Support/Lignebook/library.sqlite')
  expect(libraryPlace({ APPDATA: '/roaming' }, 'win32', '/a')).toBe('/roaming/Lignebook/library.sqlite')
})

test('the environment can name another', () => {
  expect(libraryPlace({ LIGNEBOOK_LIBRARY: '/x.sqlite' }, 'linux', '/home/a')).toBe('/x.sqlite')
})
