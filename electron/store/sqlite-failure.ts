import Database from 'better-sqlite3'
import { LignebookError } from '../../core/api/errors.ts'

/** Turns what SQLite throws into a failure that the owner can act on; anything else passes unchanged. */
export const sqliteFailure = (error: unknown, file: string): unknown => {
  if (!(error instanceof Database.SqliteError)) return error
  const { code } = error
  if (code.startsWith('SQLITE_FULL')) return new LignebookError('disk-full', { file })
  if (code.startsWith('SQLITE_NOTADB')) return new LignebookError('library-not-one', { file })
  if (code.startsWith('SQLITE_CORRUPT')) return new LignebookError('library-damaged', { file })
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) {
    return new LignebookError('library-open-elsewhere', { file })
  }
  return error
}
