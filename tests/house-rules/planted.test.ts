import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { projectFolder } from '../support/source-files.ts'

/** A copy of the project with violations planted in it, to show that each guard bites. */
const copy = mkdtempSync(join(tmpdir(), 'lignebook-planted-'))
const plant = (file: string, text: string) => writeFileSync(join(copy, file), text)
const run = (tool: string, ...words: string[]) => {
  const { status, stdout, stderr } = spawnSync(join(projectFolder, 'node_modules/.bin', tool), words, {
    cwd: copy,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' },
  })
  return { status, said: `${stdout}${stderr}` }
}
const lint = (file: string) => run('biome', 'lint', '--vcs-enabled=false', '--max-diagnostics=50', file)

beforeAll(() => {
  const parts = ['core', 'electron', 'renderer', 'migrations', 'seed-data', 'tests']
  for (const part of [...parts, 'package.json', 'biome.json', 'tsconfig.json']) {
    cpSync(join(projectFolder, part), join(copy, part), { recursive: true })
  }
  symlinkSync(join(projectFolder, 'node_modules'), join(copy, 'node_modules'))
})
afterAll(() => rmSync(copy, { recursive: true, force: true }))

describe('lint reports', () => {
  test.each([
    [
      'core/planted-node.ts',
      "import { readFileSync } from 'node:fs'\nexport const text = readFileSync('x')\n",
      'core imports zod',
    ],
    ['core/planted-package.ts', "import { sql } from 'kysely'\nexport const query = sql\n", 'core imports zod'],
    [
      'core/planted-room.ts',
      "import { x } from '../electron/x.ts'\nexport const y = x\n",
      'core does not know the rooms',
    ],
    ['core/planted-clock.ts', 'export const now = () => Date.now()\n', 'core has no clock'],
    ['core/planted-fetch.ts', "export const far = () => fetch('x')\n", 'core reaches nothing'],
    ['core/planted-any.ts', 'export const loose = (x: any) => x\n', 'noExplicitAny'],
    ['core/planted-bang.ts', 'export const sure = (x: string | undefined) => x!\n', 'noNonNullAssertion'],
    [
      'electron/planted-promise.ts',
      'const later = async () => 1\nexport const run = () => {\n  later()\n}\n',
      'noFloatingPromises',
    ],
    [
      'renderer/planted-electron.ts',
      "import { ipcRenderer } from 'electron'\nexport const x = ipcRenderer\n",
      'through renderer/api',
    ],
    [
      'renderer/planted-node.ts',
      "import { readFileSync } from 'node:fs'\nexport const x = readFileSync\n",
      'through renderer/api',
    ],
  ])('%s', (file, text, complaint) => {
    plant(file, text)
    const { status, said } = lint(file)
    rmSync(join(copy, file))
    expect(said).toContain(complaint)
    expect(status).not.toBe(0)
  })

  test('nothing where core imports what it may', () => {
    const file = 'core/planted-sound.ts'
    plant(
      file,
      "import Fraction from 'fraction.js'\nimport { z } from 'zod'\nimport { y } from './api/y.ts'\nexport const all = [Fraction, z, y]\n",
    )
    const { status, said } = lint(file)
    rmSync(join(copy, file))
    expect(said).not.toContain('noRestrictedImports')
    expect(status).toBe(0)
  })
})

test('the compiler finds neither the page nor Node in core', () => {
  plant('core/planted-globals.ts', 'export const here = [window.location, process.cwd()]\n')
  const { status, said } = run('tsc', '-p', 'core')
  rmSync(join(copy, 'core/planted-globals.ts'))
  expect(said).toMatch(/planted-globals\.ts.*'window'/)
  expect(said).toMatch(/planted-globals\.ts.*'process'/)
  expect(status).not.toBe(0)
}, 60_000)

test('knip finds a file and an export that nothing uses', () => {
  plant('core/planted-unused.ts', 'export const unused = 1\n')
  plant('core/api/planted-half.ts', 'export const used = 1\nexport const forgotten = 2\n')
  plant('tests/house-rules/planted-user.test.ts', "import { used } from '../../core/api/planted-half.ts'\nused\n")
  const { status, said } = run('knip', '--no-progress')
  expect(said).toMatch(/core\/planted-unused\.ts/)
  expect(said).toMatch(/forgotten\s.*planted-half\.ts/)
  expect(said).not.toMatch(/^used\s.*planted-half\.ts/m)
  expect(status).not.toBe(0)
}, 60_000)
