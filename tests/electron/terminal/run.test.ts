import { execFile } from 'node:child_process'
import { writeFileSync } from 'node:fs'
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
    stderr: expect.stringMatching(/^[^\n]+ is a folder;[^\n]+\n$/),
  })
})

test('an option before the command is told to come after it', async () => {
  expect(await refused('--json', 'prove', 'a.json')).toMatch(
    /^The command comes first, its options after it; known are /,
  )
  expect(await refused('pove')).toMatch(/^Unknown command 'pove'; known are /)
})

test('a refusal stands on one line, whatever a name or a value holds', async () => {
  expect(await refused('prove', 'no\nsuch\u001b[31m.json')).toBe(
    'no such [31m.json is not there; name a file that can be read.\n',
  )
  const fields = { thirdWheel: 'seventy\nfive' }
  expect(await refused('prove', fileOf(libraryFile({ ...wrongTrain, fields })))).toContain(
    '"seventy five" cannot be read',
  )
})

test('input of every wrong kind is refused in one sentence that names the file', async () => {
  const caliber = (more: object) => JSON.stringify(libraryFile({ maker: 'Verrin', designation: '1', ...more }))
  const wrong: Readonly<Record<string, string>> = {
    empty: ' ',
    broken: '{"lignebook":1,"calibers":[{"maker":"Verrin",}]}',
    number: '1',
    nothing: 'null',
    list: '[]',
    'not a number': '{"lignebook":NaN}',
    'newer form': '{"lignebook":2}',
    'form as text': '{"lignebook":"1"}',
    'calibers as object': '{"lignebook":1,"calibers":{}}',
    'a caliber of nothing': '{"lignebook":1,"calibers":[null]}',
    'no maker': '{"lignebook":1,"calibers":[{"designation":"1"}]}',
    'designation as number': '{"lignebook":1,"calibers":[{"maker":"Verrin","designation":17}]}',
    'deep brackets': `{"lignebook":1,"calibers":${'['.repeat(20_000)}${']'.repeat(20_000)}}`,
    'fields as list': caliber({ fields: [] }),
    'jewels as number': caliber({ fields: {}, jewels: [1] }),
    truth: caliber({ fields: { thirdWheel: true } }),
    'a list in a list': caliber({ fields: { thirdWheel: [[75]] } }),
    'beyond any number': '{"lignebook":1,"calibers":[{"maker":"V","designation":"1","fields":{"thirdWheel":1e309}}]}',
    'a field twice':
      '{"lignebook":1,"calibers":[{"maker":"V","designation":"1","fields":{"thirdWheel":75,"thirdWheel":76}}]}',
    huge: caliber({ fields: { thirdWheel: 1e300 } }),
    negative: caliber({ fields: { thirdWheel: -75 } }),
    fraction: caliber({ fields: { thirdWheel: 75.5 } }),
    'two ways to read': caliber({ fields: { barrelInsideMm: '1,234' } }),
    'a size number': caliber({ fields: { diameterMm: '6/0' } }),
    'other digits': caliber({ fields: { thirdWheel: '\uff17\uff15' } }),
    'no such choice': caliber({ fields: { secondsDisplay: 'sweep' } }),
  }
  for (const [kind, text] of Object.entries(wrong))
    expect(await refused('prove', fileOf(text, 'wrong.json'), '--json'), kind).toContain('wrong.json')
  const wide = fileOf('', 'wide.json')
  writeFileSync(wide, Buffer.from(caliber({ fields: {} }), 'utf16le'))
  expect(await refused('prove', wide)).toContain('is not JSON')
})
