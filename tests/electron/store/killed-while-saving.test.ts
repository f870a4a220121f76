import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { countCalibers, readCaliber } from '../../../electron/store/calibers.ts'
import { openLibrary } from '../../../electron/store/library.ts'
import { checkWordIndex, steadyClock, temporaryFolder } from '../../support/temporary-library.ts'

const child = fileURLToPath(new URL('../../support/saving-child.ts', import.meta.url))

test('a program killed while it saves loses nothing that it said was saved', async () => {
  const file = join(temporaryFolder(), 'library.sqlite')
  const said = new Map<number, string>()
  for (const acknowledged of [3, 20, 45]) {
    const program = spawn(process.execPath, [child, file], { stdio: ['ignore', 'pipe', 'inherit'] })
    let text = ''
    program.stdout.on('data', (piece: Buffer) => {
      text += piece.toString()
      if (text.split('\n').length > acknowledged) program.kill('SIGKILL')
    })
    await once(program, 'close')
    // The last piece may be half a line.
    for (const line of text.split('\n').slice(0, -1)) {
      const [, id, designation] = /^(\d+) (.*)$/.exec(line) ?? []
      said.set(Number(id), designation ?? '')
    }
    const library = await openLibrary(file, { create: false, now: steadyClock() })
    for (const [id, designation] of said) expect((await readCaliber(library, id))?.designation).toBe(designation)
    expect(await countCalibers(library)).toBeGreaterThanOrEqual(said.size)
    expect(library.connection.pragma('integrity_check', { simple: true })).toBe('ok')
    checkWordIndex(library)
    await library.close()
  }
  expect(said.size).toBeGreaterThanOrEqual(68)
})
