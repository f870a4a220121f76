import type Database from 'better-sqlite3'
import type { SqliteDatabase } from 'kysely'

/**
 * The connection as kysely sees it. When the disk fills up, SQLite rolls back by itself: kysely's own ROLLBACK would then
 * throw and hide why, and a caller that went on would write outside any transaction. Both are stopped here.
 */
export const guardedConnection = (connection: Database.Database): SqliteDatabase => {
  let begun = false
  let firstError: unknown
  return {
    close: () => connection.close(),
    prepare: (text) => {
      const verb = text.trim().toLowerCase()
      if (verb === 'rollback' && !connection.inTransaction) {
        begun = false
        return connection.prepare('select 1')
      }
      if (begun && !connection.inTransaction) throw firstError ?? new Error('the transaction has ended')
      const statement = connection.prepare(verb === 'begin' ? 'begin immediate' : text)
      const watched =
        <A extends readonly unknown[], R>(work: (...args: A) => R) =>
        (...args: A): R => {
          try {
            const result = work(...args)
            if (verb === 'begin') {
              begun = true
              firstError = undefined
            }
            if (verb === 'commit' || verb === 'rollback') begun = false
            return result
          } catch (error) {
            firstError ??= error
            throw error
          }
        }
      return {
        reader: statement.reader,
        all: watched((parameters: readonly unknown[]) => statement.all(...parameters)),
        run: watched((parameters: readonly unknown[]) => statement.run(...parameters)),
        iterate: (parameters: readonly unknown[]) => statement.iterate(...parameters),
      }
    },
  }
}
