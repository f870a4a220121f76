import { readLibraryFile } from '../../core/exchange/read-library-file.ts'
import { withBases } from '../../core/record/bases.ts'
import type { Caliber } from '../../core/record/caliber.ts'
import { openCaliber } from '../../core/record/entry.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { placeInCaliber, sayProblem } from '../service/prove-entry.ts'
import { type CommandInput, UnusableInput } from './command.ts'
import { namedCaliber } from './named-caliber.ts'
import { readText } from './read-text.ts'

export interface NamedCaliber {
  readonly maker: string
  readonly designation: string
  readonly caliber: Caliber
  /** What a sentence calls it: its place in the file, or its name in the library. */
  readonly where: string
}

/** The file that a command works on, or the library as it would be exported, with what a sentence calls it. */
export const textOf = async (input: CommandInput): Promise<{ readonly place: string; readonly text: string }> => {
  const [file] = input.words
  return file === undefined
    ? { place: String(input.options.library ?? 'The library'), text: await exported(input) }
    : { place: file, text: readText(file) }
}

/** The calibers that a command works on: those of a file, or of a library, or the one that is named. */
export const calibersOf = async (input: CommandInput): Promise<readonly NamedCaliber[]> => {
  const { options, words } = input
  const [file, ...more] = words
  if (more.length > 0) throw new UnusableInput(`One file at a time; ${more.join(' ')} is one too many.`)
  if (file !== undefined && options.library !== undefined)
    throw new UnusableInput('Name a file or a library with --library, not both.')
  const { place, text } = await textOf(input)
  const read = readLibraryFile(text, place).calibers.map((inFile, i) => {
    const { maker, designation } = inFile
    const { caliber, problems } = readEntry(openCaliber(inFile))
    // An unsigned movement can be proved; only a library needs a maker to file it under.
    const problem = problems.find(({ field }) => field !== 'maker')
    return { maker, designation, caliber, problem, path: `calibers[${i}]` }
  })
  const families = withBases(read.map(({ caliber }) => caliber))
  const all = read.map((one, i) => ({ ...one, caliber: families[i] ?? one.caliber }))
  const { caliber: name } = options
  const chosen = typeof name === 'string' ? [namedCaliber(place, all, name)] : all
  return chosen.map(({ maker, designation, caliber, problem, path }) => {
    const where = `${place}, ${file === undefined ? `${maker} ${designation}`.trim() : path}`
    if (problem) throw new UnusableInput(`${where}.${placeInCaliber(problem)}: ${sayProblem(problem)}`)
    return { maker, designation, caliber, where }
  })
}

const exported = async (input: CommandInput): Promise<string> => {
  // SQLite takes longer to load than a file takes to prove.
  const { withLibrary } = await import('./with-library.ts')
  return withLibrary(input, { create: false }, async (call) => (await call('exchange.export', {})).text)
}
