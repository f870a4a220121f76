import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { expect, test } from 'vitest'
import { fileOf, libraryFile, newFolder, refused, runCaptured, wrongTrain } from './run-captured.ts'

test('an unknown command or option, or a missing name, ends in status 2 and one sentence', async () => {
  expect(await refused('mend')).toContain("Unknown command 'mend'")
  expect(await refused('__proto__')).toContain('Unknown command')
  expect(await refused('prove', '--loud')).toContain('--loud')
  expect(await refused('prove', '--library')).toContain('library')
})

test('without a command the help goes to the other stream', async () => {
  const { status, out, err } = await runCaptured()
  expect([status, out]).toEqual([2, ''])
  expect(err).toContain('lignebook -- COMMAND')
})

test('help names every command, and each command has its own', async () => {
  const { status, out } = await runCaptured('--help')
  expect(status).toBe(0)
  for (const name of ['prove', 'fit', 'search', 'import', 'export']) {
    expect(out).toContain(`  ${name} `)
    expect((await runCaptured(name, '--help')).out).toMatch(new RegExp(`^${name} `))
  }
})

test('as a program it prints one JSON document and gives its status', async () => {
  const call = promisify(execFile)
  const program = (...args: string[]) =>
    call('npm', ['run', '-s', 'lignebook', '--', ...args]).catch(
      (error: { code: number; stdout: string; stderr: string }) => error,
    )
  const ended = await program('prove', fileOf(libraryFile(wrongTrain)), '--json')
  expect(ended).toMatchObject({ code: 1, stderr: '' })
  expect(JSON.parse(ended.stdout).calibers).toHaveLength(1)
  const stopped = await program('prove', newFolder(), '--json')
  expect(stopped).toMatchObject({
    code: 2,
    stdout: '',
    stderr: expect.stringMatching(/^[^\n]+ is a folder\.[^\n]+\n$/),
  })
})
