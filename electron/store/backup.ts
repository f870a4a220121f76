import type { Library } from './library.ts'
import { readNote, writeNote } from './notes.ts'
import { sqliteFailure } from './sqlite-failure.ts'
import { copyVerified, type VerifiedCopy } from './verified-copy.ts'

/** Copies the library to a file, checks the copy whole, names it, and remembers when. */
export const backUp = async (library: Library, targetFile: string): Promise<VerifiedCopy> => {
  try {
    const copy = copyVerified(library.connection, targetFile)
    writeNote(library, 'last-backup', library.now())
    return copy
  } catch (error) {
    throw sqliteFailure(error, targetFile)
  }
}

/** When the last backup was made, or null. */
export const lastBackup = async (library: Library): Promise<string | null> => readNote(library, 'last-backup')
