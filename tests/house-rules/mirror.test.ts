import { existsSync } from 'node:fs'
import { expect, test } from 'vitest'
import { contract } from '../../core/api/contract.ts'
import { projectFolder, readSource, sourceFiles } from '../support/source-files.ts'

/** Files without a test of the same path, each with the reason. */
const excused: Readonly<Record<string, string>> = {
  'core/api/contract.ts': 'a table; every call is held by the service handlers tests',
  'core/fields/field.ts': 'types and two lists of words',
  'core/proofs/proof.ts': 'types only',
  'core/proofs/index.ts': 'the list; held by tests/house-rules/proofs.test.ts',
  'core/quantities/quantity.ts': 'types only',
  'core/record/caliber.ts': 'types only',
  'core/record/reading.ts': 'types only',
  'electron/store/tables.ts': 'types only',
  'electron/start.ts': 'starts processes; held by the browser tests',
  'electron/shell/main.ts': 'starts the shell, which has tests of its own',
  'electron/terminal/main.ts': 'starts the commands, which have tests of their own',
}

const logic = /=>|\bfunction\b|\bclass\b/

const untested = [...sourceFiles('core'), ...sourceFiles('electron')].filter((file) => {
  if (file in excused || file.endsWith('vite.config.ts') || !logic.test(readSource(file))) return false
  return !existsSync(`${projectFolder}tests/${file.replace(/\.tsx?$/, '.test.ts')}`)
})

test('every file of core and electron with logic in it has its test at the same path', () => {
  expect(untested).toEqual([])
})

test('no file is excused that is not there', () => {
  expect(Object.keys(excused).filter((file) => !existsSync(`${projectFolder}${file}`))).toEqual([])
})

test('every call of the contract is made in a test of the service', () => {
  const said = sourceFiles('tests/electron').map(readSource).join('\n')
  expect(Object.keys(contract).filter((call) => !said.includes(`'${call}'`))).toEqual([])
})

test('every migration is in the list and is named in a test', () => {
  const names = sourceFiles('migrations')
    .filter((file) => /\/\d+-/.test(file))
    .map((file) => file.replace('migrations/', ''))
  expect(names.length).toBeGreaterThan(0)
  const list = readSource('migrations/index.ts')
  const said = sourceFiles('tests').map(readSource).join('\n')
  for (const name of names) {
    expect(list, `${name} is missing from migrations/index.ts`).toContain(name)
    expect(said, `${name} is named in no test`).toContain(name.replace('.ts', ''))
  }
})
