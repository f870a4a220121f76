import type { ParseArgsConfig } from 'node:util'

/** Where a command writes, so that a test can look. */
export interface TerminalIo {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  readonly env: Readonly<Record<string, string | undefined>>
}

export interface CommandInput {
  readonly options: Readonly<Record<string, string | boolean | undefined>>
  readonly words: readonly string[]
  readonly io: TerminalIo
}

/** 0 all well; 1 done, and something disagrees or nothing fits; 2 unusable input. */
export type ExitStatus = 0 | 1 | 2

export interface Command {
  readonly usage: string
  readonly does: string
  readonly options: NonNullable<ParseArgsConfig['options']>
  readonly run: (input: CommandInput) => Promise<ExitStatus>
}

/** What a person gave that cannot be used; its message is the one sentence they see. */
export class UnusableInput extends Error {}

export const libraryOption = { library: { type: 'string' }, json: { type: 'boolean' } } as const

/** The one document of `--json`. */
export const printJson = (io: TerminalIo, document: unknown): void => io.out(`${JSON.stringify(document, null, 2)}\n`)
