import { type Kysely, sql } from 'kysely'

const statements = [
  `create table caliber (
    id integer primary key autoincrement,
    maker text not null,
    designation text not null,
    maker_folded text not null,
    designation_folded text not null,
    designation_compact text not null,
    designation_order text not null,
    size_printed text,
    diameter_mm real,
    beat_rate_vph real,
    first_year integer,
    last_year integer,
    disagree integer not null default 0,
    doubtful integer not null default 0,
    extra text not null default '{}',
    created_at text not null,
    changed_at text not null
  ) strict`,
  'create unique index caliber_name on caliber (maker_folded, designation_folded)',
  'create index caliber_list on caliber (maker_folded, designation_order, id)',
  'create index caliber_compact on caliber (designation_compact)',
  'create index caliber_maker_compact on caliber (maker_folded, designation_compact)',
  'create index caliber_disagreeing on caliber (id) where disagree > 0',

  `create table reading (
    caliber_id integer not null references caliber (id) on delete cascade,
    position integer not null,
    field text not null,
    printed text not null,
    number real,
    word text,
    low real,
    high real,
    source text,
    page text,
    note text,
    chosen integer not null default 0 check (chosen in (0, 1)),
    extra text,
    primary key (caliber_id, position)
  ) strict, without rowid`,
  'create unique index reading_chosen on reading (caliber_id, field) where chosen',
  'create index reading_number on reading (field, number) where number is not null',
  'create index reading_word on reading (field, word) where word is not null',
  'create index reading_source on reading (source) where source is not null',

  ...[
    'jewel (place text, kind text, count integer',
    'lubrication (place text, lubricant text, amount text, note text',
    'depth (driver text, driven text, driver_pitch_mm real, driven_pitch_mm real, centre_distance_mm real',
    'part (part text, number text, note text',
    'strip_step (part text, after text, caution text',
  ].map(
    (columns) => `create table ${columns},
      caliber_id integer not null references caliber (id) on delete cascade,
      position integer not null,
      source text,
      line text not null,
      primary key (caliber_id, position)
    ) strict, without rowid`,
  ),

  `create table source (
    key text primary key,
    title text not null,
    author text,
    year integer,
    edition text,
    language text,
    units_as_printed text,
    notes text,
    extra text not null default '{}'
  ) strict, without rowid`,

  // Caliber 0 is the caliber that is not saved yet.
  'create table draft (caliber_id integer primary key, entry text not null, kept_at text not null) strict',

  `create table revision (
    id integer primary key autoincrement,
    at text not null,
    action text not null,
    taken_back integer not null default 0 check (taken_back in (0, 1)),
    left_behind integer not null default 0 check (left_behind in (0, 1))
  ) strict`,
  `create table revision_change (
    revision_id integer not null references revision (id) on delete cascade,
    position integer not null,
    caliber_id integer,
    source_key text,
    before text,
    after text,
    primary key (revision_id, position),
    check ((caliber_id is null) <> (source_key is null))
  ) strict, without rowid`,

  'create table kept_section (name text primary key, content text not null) strict, without rowid',
  'create table note (name text primary key, content text not null) strict, without rowid',

  `create table alias (
    caliber_id integer not null references caliber (id) on delete cascade,
    compact text not null,
    alias text not null,
    primary key (caliber_id, compact)
  ) strict, without rowid`,
  'create index alias_compact on alias (compact)',
  `create table search_text (
    caliber_id integer primary key references caliber (id) on delete cascade,
    text text not null,
    words text not null
  ) strict`,
  // Words arrive folded and split; the ascii tokenizer leaves every letter beyond ASCII inside its word.
  `create virtual table search_words using fts5 (
    words, content='search_text', content_rowid='caliber_id', tokenize='ascii', prefix='1 2 3 4', detail=none
  )`,
  'create table spelling (deleted text not null, word text not null, primary key (deleted, word)) strict, without rowid',
]

/** The library as it first shipped. */
export const up = async (db: Kysely<unknown>): Promise<void> => {
  for (const statement of statements) await sql.raw(statement).execute(db)
}
