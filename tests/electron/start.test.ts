import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, expect, test } from 'vitest'

const children: ChildProcess[] = []
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL')
})

interface Started {
  readonly child: ChildProcess
  readonly said: () => string
  readonly ended: Promise<number | null>
}

const start = (...args: string[]): Started => {
  const child = spawn(process.execPath, ['electron/start.ts', ...args], { stdio: ['ignore', 'pipe', 'pipe'] })
  children.push(child)
  let text = ''
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk: Buffer) => (text += chunk.toString()))
  return { child, said: () => text, ended: new Promise((done) => child.on('close', done)) }
}

const addressOf = async ({ said }: Started): Promise<URL> => {
  for (let i = 0; i < 200; i++) {
    const found = /http:\/\/127\.0\.0\.1:\d+\/#code=[\w-]+/.exec(said())
    if (found) return new URL(found[0])
    await new Promise((done) => setTimeout(done, 50))
  }
  throw new Error(`no address: ${said()}`)
}

// `npm test` builds the page first; a run of the unit tests alone may not have it.
const built = existsSync('out/page/index.html')

test.skipIf(!built)(
  'it prints an address that opens the page, and a second start is told that the library is open',
  async () => {
    const library = join(mkdtempSync(join(tmpdir(), 'start-')), 'library.sqlite')
    const first = start('--no-open', '--library', library)
    const address = await addressOf(first)
    expect(await (await fetch(address.origin)).text()).toContain('<title>')

    const headers = { origin: address.origin, 'content-type': 'application/json' }
    const body = JSON.stringify({ code: address.hash.slice('#code='.length) })
    const { token } = (await (await fetch(`${address.origin}/session`, { method: 'POST', headers, body })).json()) as {
      token: string
    }
    const ask = { method: 'POST', headers: { ...headers, authorization: `Bearer ${token}` }, body: '{}' }
    const status = await fetch(`${address.origin}/api/library.status`, ask)
    expect(await status.json()).toMatchObject({ ok: true, value: { calibers: 0, file: library } })
    expect(first.said()).not.toContain(token)

    const second = start('--no-open', '--library', library)
    expect(await second.ended).toBe(2)
    expect(second.said()).toMatch(/is open in another Lignebook; close it there first\.\n$/)

    first.child.kill('SIGINT')
    expect(await first.ended).toBe(0)
    expect(existsSync(`${library}-wal`)).toBe(false)
  },
)

test('a port that no page may have is refused in one sentence', async () => {
  const { ended, said } = start('--no-open', '--port', '80')
  expect(await ended).toBe(2)
  expect(said()).toBe('--port takes a number from 1024 to 65535.\n')
})

test('an option that is not known is refused in one sentence', async () => {
  const { ended, said } = start('--loud')
  expect(await ended).toBe(2)
  expect(said()).toMatch(/^[^\n]*--loud[^\n]*\n$/)
})
