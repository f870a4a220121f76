import { parseArgs } from 'node:util'
import { LignebookError } from '../../core/api/errors.ts'
import { wordFailure } from '../../core/wording/failure.ts'
import { type Command, type ExitStatus, type TerminalIo, UnusableInput } from './command.ts'

/** Each command in a file of its own, loaded when it is asked for. */
const commands: Readonly<Record<string, () => Promise<Command>>> = {
  prove: async () => (await import('./prove.ts')).prove,
  missing: async () => (await import('./missing.ts')).missing,
  fit: async () => (await import('./fit.ts')).fit,
  'lost-spring': async () => (await import('./lost-spring.ts')).lostSpring,
  springs: async () => (await import('./springs.ts')).springs,
  search: async () => (await import('./search.ts')).search,
  import: async () => (await import('./import.ts')).importCommand,
  export: async () => (await import('./export.ts')).exportCommand,
}

const help = async (): Promise<string> => {
  const lines = ['npm run -s lignebook -- COMMAND …', '']
  for (const load of Object.values(commands)) {
    const { usage, does } = await load()
    lines.push(`  ${usage}`, `      ${does}`)
  }
  return `${lines.join('\n')}

--json prints one JSON document and nothing else. Without --library the command works on your own library.
Status: 0 all well; 1 done, and something disagrees or nothing fits; 2 the input cannot be used.
`
}

const parse = (args: readonly string[], options: Command['options']) => {
  try {
    const known = { ...options, help: { type: 'boolean' as const } }
    const { values, positionals } = parseArgs({ args: [...args], options: known, allowPositionals: true })
    return { values: values as Readonly<Record<string, string | boolean | undefined>>, positionals }
  } catch (error) {
    // Node words these for a person; its advice on quoting comes after the first sentence.
    const [sentence = ''] = (error as Error).message.split(/\. |\n/)
    throw new UnusableInput(`${sentence.replace(/\.$/, '')}; see --help.`)
  }
}

/** A refusal stands on one line, whatever characters a name or a value holds. */
const onOneLine = (sentence: string): string => `${sentence.replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')}\n`

/** Runs one command. Whatever a person gave that cannot be used ends in one sentence and status 2. */
export const run = async (args: readonly string[], io: TerminalIo): Promise<ExitStatus> => {
  const [name, ...rest] = args
  try {
    if (name === undefined || name === '--help' || name === 'help') {
      const text = await help()
      if (name === undefined) io.err(text)
      else io.out(text)
      return name === undefined ? 2 : 0
    }
    const load = Object.hasOwn(commands, name) ? commands[name] : undefined
    if (!load)
      throw new UnusableInput(
        `${name.startsWith('-') ? 'The command comes first, its options after it' : `Unknown command '${name}'`}; known are ${Object.keys(commands).join(', ')}; see --help.`,
      )
    const command = await load()
    const { values, positionals } = parse(rest, command.options)
    if (values.help) {
      io.out(`${command.usage}\n${command.does}\n`)
      return 0
    }
    return await command.run({ options: values, words: positionals, io })
  } catch (error) {
    if (error instanceof UnusableInput) io.err(onOneLine(error.message))
    else if (error instanceof LignebookError) io.err(onOneLine(wordFailure(error.failure)))
    else throw error
    return 2
  }
}
