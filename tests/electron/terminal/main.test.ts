import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { fileOf, goodTrain, libraryFile, wrongTrain } from './run-captured.ts'

const main = join(import.meta.dirname, '../../../electron/terminal/main.ts')
/** The last line is the status of the command, whatever its reader's. */
const inShell = (command: string) =>
  execFileSync('bash', ['-c', `${command} 2>&1; echo "$?"`], { encoding: 'utf8' })
    .trimEnd()
    .split('\n')
const lignebook = (...args: string[]) => [process.execPath, main, ...args].map((word) => `'${word}'`).join(' ')

test('a reader that has had enough is no fault, and the status says how the proofs went', () => {
  const many = Array.from({ length: 60 }, (_, i) => ({ ...wrongTrain, designation: `17-${i}` }))
  const command = lignebook('prove', fileOf(libraryFile(...many)), '--json')
  expect(inShell(`set -o pipefail; ${command} | head -1`)).toEqual(['{', '1'])
})

test.runIf(process.platform === 'linux')('an answer that cannot be written ends in one sentence and status 2', () => {
  const command = lignebook('prove', fileOf(libraryFile(goodTrain)), '--json')
  expect(inShell(`{ ${command} > /dev/full; }`)).toEqual([
    expect.stringMatching(/^The answer cannot be written .*\.$/),
    '2',
  ])
})
