import Database from 'better-sqlite3'
import { LignebookError } from '../../core/api/errors.ts'

/** Whether the system refused a file: no such folder, no right to it, a folder where a file should be. */
const isSystemError = (error: unknown): error is NodeJS.ErrnoException =>
  error instanceof Error && 'syscall' in error && 'code' in error

/** Turns what SQLite or the system says of a file into a failure that the owner can act on; anything else passes unchanged. */
export const sqliteFailure = (error: unknown, file: string): unknown => {
  if (isSystemError(error))
    return new LignebookError(error.code === 'ENOSPC' ? 'disk-full' : 'library-not-openable', { file })
  if (!(error instanceof Database.SqliteError)) return error
  const { code } = error
  if (code.startsWith('SQLITE_FULL')) return new LignebookError('disk-full', { file })
  if (code.startsWith('SQLITE_NOTADB')) return new LignebookError('library-not-one', { file })
  if (code.startsWith('SQLITE_CORRUPT')) return new LignebookError('library-damaged', { file })
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) {
    return new LignebookError('library-open-elsewhere', { file })
  }
  if (/^SQLITE_(?:CANTOPEN|READONLY|PERM)/.test(code)) return new LignebookError('library-not-openable', { file })
  return error
}
