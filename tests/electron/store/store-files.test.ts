import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'

const store = fileURLToPath(new URL('../../../electron/store/', import.meta.url))

test('only opening and copying touch files: reading the live library beside SQLite would drop its locks', () => {
  const touching = readdirSync(store).filter((name) => /from 'node:fs/.test(readFileSync(store + name, 'utf8')))
  expect(touching).toEqual(['check-library-file.ts', 'library.ts', 'verified-copy.ts'])
})
