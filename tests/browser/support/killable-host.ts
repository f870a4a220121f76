import { spawn } from 'node:child_process'
import { join } from 'node:path'

const start = join(import.meta.dirname, '../../../electron/start.ts')

export interface KillableHost {
  readonly address: string
  /** Ends the process at once, as a power cut would, and waits until it is gone. */
  readonly kill: () => Promise<void>
}

/** The host as `npm start` runs it, in a process of its own. */
export const startKillableHost = async (file: string): Promise<KillableHost> => {
  const child = spawn(process.execPath, [start, '--no-open', '--library', file], { stdio: ['ignore', 'pipe', 'pipe'] })
  const gone = new Promise<void>((done) => child.once('close', () => done()))
  const kill = async () => {
    child.kill('SIGKILL')
    await gone
  }
  let said = ''
  const address = await new Promise<string>((found, failed) => {
    const listen = (chunk: Buffer) => {
      said += chunk.toString()
      const printed = /http:\/\/127\.0\.0\.1:\d+\/#code=[\w-]+/.exec(said)
      if (printed) found(printed[0])
    }
    child.stdout.on('data', listen)
    child.stderr.on('data', listen)
    child.once('close', () => failed(new Error(`the host ended before it was open: ${said}`)))
  })
  return { address, kill }
}
