import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { ExitStatus } from '../../../electron/terminal/command.ts'
import { run } from '../../../electron/terminal/run.ts'

export interface Captured {
  readonly status: ExitStatus
  readonly out: string
  readonly err: string
}

/** Runs a command in this process and catches what it writes. */
export const runCaptured = async (...args: string[]): Promise<Captured> => {
  let out = ''
  let err = ''
  const io = {
    out: (text: string) => {
      out += text
    },
    err: (text: string) => {
      err += text
    },
    env: {},
  }
  const status = await run(args, io)
  return { status, out, err }
}

export const newFolder = (): string => mkdtempSync(join(tmpdir(), 'terminal-'))

/** Writes a document as a JSON file and answers where. */
export const fileOf = (content: unknown, name = 'calibers.json'): string => {
  const file = join(newFolder(), name)
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content))
  return file
}

// An 18 000 train with seconds at the fourth arbor, and a spring that fills a barrel sensibly.
const fields = {
  beatRateVph: 18000,
  diameterMm: "17'''",
  secondsDisplay: 'small',
  barrelTeeth: 80,
  centrePinion: 10,
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}
export const goodTrain = { maker: 'Verrin', designation: '17-220', fields }
export const wrongTrain = { maker: 'Verrin', designation: '17-221', fields: { ...fields, thirdWheel: 70 } }
export const libraryFile = (...calibers: unknown[]) => ({ lignebook: 1, calibers })
