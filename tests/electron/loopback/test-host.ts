import { type LoopbackHost, startLoopback } from '../../../electron/loopback/host.ts'
import type { PageFiles } from '../../../electron/page/page-files.ts'

export const files: PageFiles = new Map([
  ['/', { bytes: Buffer.from('<!doctype html>page'), type: 'text/html; charset=utf-8' }],
  ['/assets/page.js', { bytes: Buffer.from('let page'), type: 'text/javascript; charset=utf-8' }],
])

export interface TestHost extends LoopbackHost {
  readonly port: number
  readonly calls: { name: string; input: unknown }[]
  readonly logged: string[]
  /** Lets time pass, in milliseconds. */
  readonly wait: (ms: number) => void
  readonly code: () => string
  readonly token: () => Promise<string>
  readonly post: (path: string, headers: Record<string, string>, body: string) => Promise<Response>
}

/** A loopback host with a dispatcher that only notes what reached it. */
export const startTestHost = async (): Promise<TestHost> => {
  const calls: TestHost['calls'] = []
  const logged: string[] = []
  let now = 0
  const host = await startLoopback({
    files: () => files,
    dispatch: async (name, input) => {
      calls.push({ name, input })
      return { ok: true, value: { secret: 'data' } }
    },
    now: () => now,
    log: (line) => logged.push(line),
  })
  const code = () => new URL(host.newAddress()).hash.slice('#code='.length)
  const post: TestHost['post'] = (path, headers, body) =>
    fetch(`${host.origin}${path}`, { method: 'POST', headers, body })
  return {
    ...host,
    port: Number(new URL(host.origin).port),
    calls,
    logged,
    wait: (ms) => {
      now += ms
    },
    code,
    post,
    token: async () => {
      const headers = { origin: host.origin, 'content-type': 'application/json' }
      const answer = await post('/session', headers, JSON.stringify({ code: code() }))
      return ((await answer.json()) as { token: string }).token
    },
  }
}
