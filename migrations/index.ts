import type { Kysely } from 'kysely'
import * as library from './0010-library.ts'
import * as attachments from './0020-attachments.ts'
import * as overrules from './0030-overrules.ts'
import * as stock from './0040-stock.ts'
import * as gaugeTables from './0050-gauge-tables.ts'

export interface Migration {
  /** The schema number that the file has afterwards. */
  readonly number: number
  readonly name: string
  readonly up: (db: Kysely<unknown>) => Promise<void>
}

/** Every migration, oldest first. One that has shipped is never edited. */
export const migrations: readonly Migration[] = [
  { number: 10, name: 'library', up: library.up },
  { number: 20, name: 'attachments', up: attachments.up },
  { number: 30, name: 'overrules', up: overrules.up },
  { number: 40, name: 'stock', up: stock.up },
  { number: 50, name: 'gauge-tables', up: gaugeTables.up },
]
