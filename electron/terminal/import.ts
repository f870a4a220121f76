import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import type { ImportCounts } from '../../core/api/contract.ts'
import { wordImport } from '../../core/wording/import-report.ts'
import { type Command, type CommandInput, libraryOption, printJson, UnusableInput } from './command.ts'
import { readText } from './read-text.ts'

export const importCommand: Command = {
  usage: 'import FILE [--library FILE.sqlite] [--dry-run]',
  does: 'Brings in calibers from a JSON or CSV file; what cannot be read is left out whole.',
  options: { ...libraryOption, 'dry-run': { type: 'boolean' } },
  run: async (input) => {
    const { words, options, io } = input
    const [file, ...more] = words
    if (file === undefined || more.length > 0) throw new UnusableInput('Name one file to import.')
    const text = readText(file)
    const dryRun = options['dry-run'] === true
    const counts = await bringIn(input, { name: basename(file), text, dryRun })
    if (options.json) printJson(io, counts)
    else io.out(`${wordImport(counts, dryRun).join('\n')}\n`)
    const [refused] = counts.refused
    if (refused) io.err(`${file}, ${refused.path}: ${refused.reason.replace(/\.?$/, '.')}\n`)
    return refused === undefined ? 0 : takenIn(counts) ? 1 : 2
  },
}

const takenIn = ({ added, updated, unchanged }: ImportCounts): boolean => added + updated + unchanged > 0

/** A library that is not there yet is begun only when there is something to put in it. */
const bringIn = async (
  input: CommandInput,
  file: { readonly name: string; readonly text: string; readonly dryRun: boolean },
): Promise<ImportCounts> => {
  const { libraryOf, withLibrary } = await import('./with-library.ts')
  if (!existsSync(libraryOf(input))) {
    const folder = mkdtempSync(join(tmpdir(), 'lignebook-'))
    try {
      const place = { create: true, file: join(folder, 'trial.sqlite') }
      const trial = await withLibrary(input, place, (call) => call('exchange.import', { ...file, dryRun: true }))
      if (file.dryRun || (trial.refused.length > 0 && !takenIn(trial))) return trial
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  }
  return withLibrary(input, { create: true }, (call) => call('exchange.import', file))
}
