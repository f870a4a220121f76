import { readFileSync } from 'node:fs'
import { UnusableInput } from './command.ts'

/** Reads a file as UTF-8 text, or says in one sentence why it cannot be read. */
export const readText = (file: string): string => {
  let bytes: Buffer
  try {
    bytes = readFileSync(file)
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    const why = code === 'ENOENT' ? 'is not there' : code === 'EISDIR' ? 'is a folder' : 'cannot be opened'
    throw new UnusableInput(`${file || 'A file without a name'} ${why}; name a file that can be read.`)
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new UnusableInput(`${file} is not a text in UTF-8; save it in that form and try again.`)
  }
}
