import { closeSync, openSync, readSync, statSync } from 'node:fs'
import Database from 'better-sqlite3'
import { LignebookError } from '../../core/api/errors.ts'
import { newestSchema } from './migrate.ts'
import { sqliteFailure } from './sqlite-failure.ts'

/** 'Lgnb' in ASCII: the mark by which a file is known as a library. */
export const applicationId = 0x4c676e62

const magic = 'SQLite format 3\0'

/**
 * Refuses a file that is not a sound library of ours, before anything could be written to it.
 * The file may not be open in this process: closing it here would drop SQLite's locks on it.
 */
export const checkLibraryFile = (file: string): void => {
  const found = statSync(file, { throwIfNoEntry: false })
  if (found === undefined) throw new LignebookError('not-found', { file })
  if (found.isDirectory()) throw new LignebookError('library-not-one', { file })
  if (found.size === 0) throw new LignebookError('library-empty-file', { file })
  let connection: Database.Database | undefined
  try {
    if (startOf(file) !== magic) throw new LignebookError('library-not-one', { file })
    connection = new Database(file, { readonly: true, fileMustExist: true, timeout: 250 })
    if (connection.pragma('application_id', { simple: true }) !== applicationId) {
      throw new LignebookError('library-not-one', { file })
    }
    if (Number(connection.pragma('user_version', { simple: true })) > newestSchema) {
      throw new LignebookError('library-from-newer-version', { file })
    }
    if (connection.pragma('quick_check(1)', { simple: true }) !== 'ok') {
      throw new LignebookError('library-damaged', { file })
    }
  } catch (error) {
    throw sqliteFailure(error, file)
  } finally {
    connection?.close()
  }
}

const startOf = (file: string): string => {
  const handle = openSync(file, 'r')
  try {
    const start = Buffer.alloc(magic.length)
    readSync(handle, start, 0, magic.length, 0)
    return start.toString('latin1')
  } finally {
    closeSync(handle)
  }
}
