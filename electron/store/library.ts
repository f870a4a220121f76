import { existsSync, realpathSync, renameSync, rmSync } from 'node:fs'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { type Compilable, Kysely, SqliteDialect } from 'kysely'
import { LignebookError } from '../../core/api/errors.ts'
import { applicationId, checkLibraryFile } from './check-library-file.ts'
import { guardedConnection } from './guarded-connection.ts'
import { migrate, newestSchema, schemaOf } from './migrate.ts'
import { setUpConnection } from './set-up-connection.ts'
import { sqliteFailure } from './sqlite-failure.ts'
import type { Tables } from './tables.ts'
import { copyVerified } from './verified-copy.ts'

/** An open library. Everything the store does takes it first. */
export interface Library {
  readonly file: string
  readonly db: Kysely<Tables>
  readonly connection: Database.Database
  readonly now: () => string
  /** A statement by its text, prepared once. */
  readonly prepare: (text: string) => Database.Statement<unknown[]>
  readonly close: () => Promise<void>
}

export interface OpenOptions {
  /** Whether a library is begun where there is no file yet. */
  readonly create: boolean
  /** The moment, ISO 8601 in UTC. */
  readonly now: () => string
}

const openFiles = new Set<string>()

/**
 * Opens the library in a file, checked before and asserted after, and brought up to date behind a verified copy.
 * @throws LignebookError library-empty-file, library-not-one, library-damaged, library-from-newer-version,
 * library-open-elsewhere, library-not-openable or not-found; the file is as it was.
 */
export const openLibrary = async (file: string, { create, now }: OpenOptions): Promise<Library> => {
  if (create && !existsSync(file)) await begin(file)
  if (!existsSync(file)) throw new LignebookError('not-found', { file })
  const place = realpathSync(file)
  // Reading a file that is open here would drop SQLite's locks on it, so this stands before the check.
  if (openFiles.has(place)) throw new LignebookError('library-open-elsewhere', { file })
  openFiles.add(place)
  try {
    checkLibraryFile(file)
    const connection = connect(file)
    try {
      const db = kyselyOver(connection)
      const present = schemaOf(connection)
      if (present < newestSchema) {
        copyVerified(connection, `${file}.before-schema-${newestSchema}-${now().replaceAll(':', '')}`)
        await migrate(connection, db)
      }
      return libraryOver(file, connection, db, now, () => openFiles.delete(place))
    } catch (error) {
      connection.close()
      throw error
    }
  } catch (error) {
    openFiles.delete(place)
    throw sqliteFailure(error, file)
  }
}

/** Makes the empty library beside its place and moves it there whole, so that a crash leaves no half file. */
const begin = async (file: string): Promise<void> => {
  if (!existsSync(dirname(file))) throw new LignebookError('not-found', { file: dirname(file) })
  const unfinished = `${file}.unfinished-${process.pid}`
  rmSync(unfinished, { force: true })
  try {
    const connection = connect(unfinished)
    try {
      connection.pragma(`application_id = ${applicationId}`)
      await migrate(connection, kyselyOver(connection))
    } finally {
      connection.close()
    }
    renameSync(unfinished, file)
  } catch (error) {
    for (const tail of ['', '-wal', '-shm']) rmSync(unfinished + tail, { force: true })
    throw sqliteFailure(error, file)
  }
}

const connect = (file: string): Database.Database => {
  const connection = new Database(file, { timeout: 250 })
  try {
    setUpConnection(connection)
    return connection
  } catch (error) {
    connection.close()
    throw error
  }
}

const kyselyOver = (connection: Database.Database): Kysely<Tables> =>
  new Kysely<Tables>({ dialect: new SqliteDialect({ database: guardedConnection(connection) }) })

const libraryOver = (
  file: string,
  connection: Database.Database,
  db: Kysely<Tables>,
  now: () => string,
  closed: () => void,
): Library => {
  const statements = new Map<string, Database.Statement<unknown[]>>()
  return {
    file,
    db,
    connection,
    now,
    prepare: (text) => {
      const known = statements.get(text)
      if (known) return known
      const statement = connection.prepare<unknown[]>(text)
      statements.set(text, statement)
      return statement
    },
    close: async () => {
      if (!connection.open) return
      connection.pragma('wal_checkpoint(TRUNCATE)')
      connection.close()
      closed()
    },
  }
}

/** The rows of a query built with kysely. Reads run at once, so none can fall inside a half-done change. */
export const rows = <R>(library: Library, query: Compilable<R>): R[] => {
  const { sql, parameters } = query.compile()
  return library.prepare(sql).all(...parameters) as R[]
}

/** Runs a query built with kysely that answers nothing. */
export const run = (library: Library, query: Compilable<unknown>): Database.RunResult => {
  const { sql, parameters } = query.compile()
  return library.prepare(sql).run(...parameters)
}

/** Runs `work` as one transaction; it must not wait for anything. Nothing of it stays if it throws. */
export const write = <T>(library: Library, work: () => T): T => {
  try {
    // better-sqlite3 looks whether SQLite has already rolled back (full disk) before it does so itself.
    return library.connection.transaction(work).immediate()
  } catch (error) {
    throw sqliteFailure(error, library.file)
  }
}
