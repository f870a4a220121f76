import type Database from 'better-sqlite3'

const settings = {
  locking_mode: 'exclusive',
  journal_mode: 'wal',
  synchronous: 2,
  foreign_keys: 1,
  trusted_schema: 0,
  cell_size_check: 1,
} as const

/**
 * Sets a connection so that nothing acknowledged can be lost, and holds it to that.
 * The order matters, and the check comes after a first read: this build of SQLite lowers `synchronous` to 1 at the first
 * access in WAL mode unless it was set explicitly, and reads 2 before that.
 */
export const setUpConnection = (connection: Database.Database): void => {
  connection.pragma('locking_mode = EXCLUSIVE')
  connection.pragma('journal_mode = WAL')
  connection.pragma('synchronous = FULL')
  connection.pragma('foreign_keys = ON')
  connection.pragma('trusted_schema = OFF')
  connection.pragma('cell_size_check = ON')
  connection.prepare('select count(*) from sqlite_schema').get()
  for (const [name, wanted] of Object.entries(settings)) {
    const found = connection.pragma(name, { simple: true })
    if (found !== wanted) throw new Error(`SQLite setting ${name} is ${String(found)}, not ${wanted}`)
  }
}
