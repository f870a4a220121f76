import { type Library, run, write } from './library.ts'
import { sqliteFailure } from './sqlite-failure.ts'
import { copyVerified, type VerifiedCopy } from './verified-copy.ts'

/** Copies the library to a file, checks the copy whole, names it, and remembers when. */
export const backUp = async (library: Library, targetFile: string): Promise<VerifiedCopy> => {
  try {
    const copy = copyVerified(library.connection, targetFile)
    const row = { name: 'last-backup', content: library.now() }
    write(library, () => run(library, library.db.replaceInto('note').values(row)))
    return copy
  } catch (error) {
    throw sqliteFailure(error, targetFile)
  }
}

/** When the last backup was made, or null. */
export const lastBackup = async (library: Library): Promise<string | null> => {
  const at = library.prepare("select content from note where name = 'last-backup'").pluck().get()
  return typeof at === 'string' ? at : null
}
