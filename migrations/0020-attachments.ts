import { type Kysely, sql } from 'kysely'

const statements = [
  `create table attachment (
    sha256 text primary key check (length(sha256) = 64),
    type text not null check (type in ('image/png', 'image/jpeg', 'application/pdf')),
    name text not null,
    size integer not null,
    added_at text not null,
    extra text not null default '{}',
    bytes blob not null
  ) strict`,
  // No reference to caliber or source: a use waits while the removal of its caliber can still be taken back.
  `create table attachment_use (
    id integer primary key autoincrement,
    sha256 text not null references attachment (sha256),
    caliber_id integer,
    source text,
    page text,
    position integer not null,
    note text,
    extra text not null default '{}',
    check ((caliber_id is null) <> (source is null))
  ) strict`,
  'create index attachment_use_caliber on attachment_use (caliber_id) where caliber_id is not null',
  'create index attachment_use_source on attachment_use (source) where source is not null',
  'create index attachment_use_bytes on attachment_use (sha256)',
  `create table attachment_change (
    revision_id integer not null references revision (id) on delete cascade,
    position integer not null,
    use_id integer not null,
    sha256 text not null references attachment (sha256) on delete cascade,
    before text,
    after text,
    primary key (revision_id, position)
  ) strict, without rowid`,
  'create index attachment_change_bytes on attachment_change (sha256)',
]

/** Pictures and scans by their SHA-256, where they stand, and what revisions remember of that. */
export const up = async (db: Kysely<unknown>): Promise<void> => {
  for (const statement of statements) await sql.raw(statement).execute(db)
}
