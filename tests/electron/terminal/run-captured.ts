import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect } from 'vitest'
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

/** Runs a command that must refuse its input: one sentence, on one line, and nothing on the other stream. */
export const refused = async (...args: string[]): Promise<string> => {
  const { status, out, err } = await runCaptured(...args)
  expect({ args, status, out }).toEqual({ args, status: 2, out: '' })
  expect(err).toMatch(/^[^\n]+\.\n$/)
  expect(err).not.toMatch(/[.!?] \p{Lu}/u)
  expect(err).not.toMatch(/ at .*\.ts|Error:/)
  return err
}

/** Runs a command with `--json`; its output must be one JSON document, and its other stream empty. */
export const answered = async <T>(...args: string[]): Promise<{ status: ExitStatus; document: T }> => {
  const { status, out, err } = await runCaptured(...args, '--json')
  expect({ args, err }).toEqual({ args, err: '' })
  return { status, document: JSON.parse(out) as T }
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
/** The good train with one count that cannot be read. */
export const unreadable = { ...goodTrain, designation: 'bad', fields: { ...fields, thirdWheel: 'many' } }
export const libraryFile = (...calibers: unknown[]) => ({ lignebook: 1, calibers })

/** A library of its own with these calibers in it. */
export const libraryOf = async (...calibers: unknown[]): Promise<string> => {
  const library = join(newFolder(), 'library.sqlite')
  const { err } = await runCaptured('import', fileOf(libraryFile(...calibers)), '--library', library)
  expect(err).toBe('')
  return library
}
