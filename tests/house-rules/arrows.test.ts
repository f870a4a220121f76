import { describe, expect, test } from 'vitest'
import { brokenArrows } from '../support/arrows.ts'
import { importsOf } from '../support/imports.ts'
import { readSource, sourceFiles } from '../support/source-files.ts'

const files = ['core', 'electron', 'renderer', 'migrations', 'seed-data'].flatMap((room) => sourceFiles(room))

test('every import follows the arrows', () => {
  expect(files.length).toBeGreaterThan(20)
  expect(files.flatMap((file) => brokenArrows(file, readSource(file)))).toEqual([])
})

test('only the shell, the preload and the start ask for electron', () => {
  const askers = files.filter((file) =>
    importsOf(readSource(file)).some(({ of, typeOnly }) => of === 'electron' && !typeOnly),
  )
  for (const file of askers) expect(file).toMatch(/^electron\/(shell|preload)\/|^electron\/start\.ts$/)
})

test('core takes no chance and reads no clock', () => {
  for (const file of sourceFiles('core')) {
    expect(readSource(file).replace(/\/\*[\s\S]*?\*\//g, ''), file).not.toMatch(
      /\bMath\.random\b|\bDate\b[.(]|\bglobalThis\b/,
    )
  }
})

test('the service and the hosts speak no SQL', () => {
  for (const room of ['electron/service', 'electron/shell', 'electron/loopback', 'electron/terminal']) {
    for (const file of sourceFiles(room)) {
      expect(readSource(file), file).not.toMatch(/\bsql`|\bselectFrom\(|\binsertInto\(|\bPRAGMA\b/)
    }
  }
})

describe('a planted violation is caught', () => {
  test.each([
    ['core/formulas/planted.ts', "const z = await import('zod')"],
    ['core/formulas/planted.ts', "import { readFileSync } from 'node:fs'"],
    ['core/formulas/planted.ts', "import { openLibrary } from '../../electron/store/library.ts'"],
    ['core/formulas/planted.ts', "export * from '../../renderer/app/main.tsx'"],
    ['electron/store/planted.ts', "import { createHandlers } from '../service/handlers.ts'"],
    ['electron/service/planted.ts', "import { sql } from 'kysely'"],
    ['electron/service/planted.ts', "const { app } = await import('electron')"],
    ['renderer/pages/planted.tsx', "import type { Library } from '../../electron/store/library.ts'"],
    ['renderer/pages/planted.tsx', "import {\n  ipcRenderer,\n} from 'electron'"],
    ['migrations/010-planted.ts', "import { caliberFields } from '../core/fields/caliber-fields.ts'"],
    ['planted.ts', ''],
  ])('%s: %s', (file, source) => {
    expect(brokenArrows(file, source)).toHaveLength(1)
  })

  test('an import in a comment is none', () => {
    expect(brokenArrows('core/planted.ts', "// import 'electron'\n/* import('electron') */")).toEqual([])
  })
})
