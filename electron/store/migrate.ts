import type Database from 'better-sqlite3'
import { type Kysely, sql } from 'kysely'
import { type Migration, migrations } from '../../migrations/index.ts'

/** The schema number that this version writes. */
export const newestSchema = Math.max(...migrations.map(({ number }) => number))

/**
 * Brings a library up to date: each migration with its schema number in one transaction, so that a failed one leaves nothing.
 * kysely's own migrator runs SQLite migrations outside a transaction and is not used.
 */
export const migrate = async <T>(
  connection: Database.Database,
  db: Kysely<T>,
  list: readonly Migration[] = migrations,
): Promise<void> => {
  const present = schemaOf(connection)
  const due = list.filter(({ number }) => number > present)
  if (due.length === 0) return
  // Rebuilding a table needs this off, and it has no effect inside a transaction.
  connection.pragma('foreign_keys = OFF')
  try {
    for (const { number, name, up } of due) {
      await db.transaction().execute(async (transaction) => {
        // A migration knows tables as they were, never as the newest types say.
        await up(transaction as unknown as Kysely<unknown>)
        if ((await sql`pragma foreign_key_check`.execute(transaction)).rows.length > 0) {
          throw new Error(`migration ${name} leaves rows that refer to nothing`)
        }
        await sql.raw(`pragma user_version = ${number}`).execute(transaction)
      })
    }
  } finally {
    connection.pragma('foreign_keys = ON')
  }
}

/** The schema number of an open file; 0 for one that is still empty. */
export const schemaOf = (connection: Database.Database): number =>
  Number(connection.pragma('user_version', { simple: true }))
