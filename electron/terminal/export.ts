import { closeSync, openSync, readSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import type { Client } from '../../core/api/client.ts'
import { type Command, libraryOption, printJson, UnusableInput } from './command.ts'
import { namedCaliber } from './named-caliber.ts'

export const exportCommand: Command = {
  usage: 'export FILE.json [--library FILE.sqlite] [--caliber NAME]',
  does: 'Writes the library, or one caliber of it, as a JSON file.',
  options: { ...libraryOption, caliber: { type: 'string' } },
  run: async (input) => {
    const { words, options, io } = input
    const [file, ...more] = words
    if (file === undefined || more.length > 0) throw new UnusableInput('Name one file to write to.')
    if (isSqlite(file))
      throw new UnusableInput(`${file} is a library and would be lost; name another file to write to.`)
    const { caliber } = options
    const { withLibrary } = await import('./with-library.ts')
    const text = await withLibrary(input, { create: false }, async (call) => {
      const id = typeof caliber === 'string' ? await idOf(call, caliber) : undefined
      return (await call('exchange.export', id === undefined ? {} : { caliberId: id })).text
    })
    writeWhole(file, text)
    const calibers = (JSON.parse(text) as { calibers: unknown[] }).calibers.length
    if (options.json) printJson(io, { file, calibers })
    else io.out(`${calibers === 1 ? '1 caliber' : `${calibers} calibers`} written to ${file}.\n`)
    return 0
  },
}

const pageLength = 500

const idOf = async (call: Client, name: string): Promise<number> => {
  const calibers: { id: number; maker: string; designation: string }[] = []
  for (;;) {
    const { rows } = await call('calibers.page', { offset: calibers.length, limit: pageLength })
    calibers.push(...rows)
    if (rows.length < pageLength) return namedCaliber('The library', calibers, name).id
  }
}

const sqliteMagic = 'SQLite format 3\0'

/** Whether a library, or another file that SQLite keeps, stands where an export is to go. */
const isSqlite = (file: string): boolean => {
  try {
    const handle = openSync(file, 'r')
    try {
      const start = Buffer.alloc(sqliteMagic.length)
      readSync(handle, start, 0, start.length, 0)
      return start.toString('latin1') === sqliteMagic
    } finally {
      closeSync(handle)
    }
  } catch {
    return false
  }
}

/** Written beside its place and moved there, so that no half file is left. */
const writeWhole = (file: string, text: string): void => {
  const unfinished = `${file}.unfinished`
  try {
    writeFileSync(unfinished, text)
    renameSync(unfinished, file)
  } catch {
    rmSync(unfinished, { force: true })
    throw new UnusableInput(
      `${file || 'A file without a name'} cannot be written; choose a folder that can be written to.`,
    )
  }
}
