import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { readPageFiles } from '../../../electron/page/page-files.ts'

test('the list holds each file of the page by its path, the index also as the root, and nothing that is linked in', () => {
  const folder = mkdtempSync(join(tmpdir(), 'page-'))
  mkdirSync(join(folder, 'assets'))
  writeFileSync(join(folder, 'index.html'), 'index')
  writeFileSync(join(folder, 'assets', 'a-1.js'), 'a')
  writeFileSync(join(folder, 'assets', 'a-1.js.map'), '{}')
  writeFileSync(join(folder, 'library.sqlite'), 'no page file')
  symlinkSync('/etc/hostname', join(folder, 'assets', 'linked.css'))
  const files = readPageFiles(folder)
  expect([...files.keys()].sort()).toEqual(['/', '/assets/a-1.js', '/index.html'])
  expect(files.get('/assets/a-1.js')).toEqual({ bytes: Buffer.from('a'), type: 'text/javascript; charset=utf-8' })
})
