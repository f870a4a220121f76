import { type Kysely, sql } from 'kysely'

const readable = `said.type = 'object' and json_type(said.value, '$.supplierRef') = 'text'
  and json_type(said.value, '$.heightMm') in ('real', 'integer') and said.value ->> 'heightMm' > 0
  and json_type(said.value, '$.thicknessMm') in ('real', 'integer') and said.value ->> 'thicknessMm' > 0
  and coalesce(json_type(said.value, '$.lengthMm'), 'real') in ('real', 'integer')
  and coalesce(json_type(said.value, '$.barrelMm'), 'real') in ('real', 'integer')
  and coalesce(json_type(said.value, '$.inStock'), 'integer') = 'integer'`

const statements = [
  `create table spring (
    id integer primary key autoincrement,
    tray text not null,
    supplier_ref text not null check (supplier_ref <> ''),
    height_mm real not null check (height_mm > 0),
    thickness_mm real not null check (thickness_mm > 0),
    length_mm real check (length_mm > 0),
    barrel_mm real check (barrel_mm > 0),
    spring_end text,
    material text,
    in_stock integer check (in_stock >= 0),
    price text,
    note text,
    extra text not null default '{}'
  ) strict`,
  'create unique index spring_ref on spring (tray, supplier_ref)',
  `create table order_line (
    id integer primary key autoincrement,
    line text not null
  ) strict`,
  `create table stock_change (
    revision_id integer not null references revision (id) on delete cascade,
    position integer not null,
    kind text not null check (kind in ('spring', 'order')),
    record_id integer not null,
    before text,
    after text,
    primary key (revision_id, position)
  ) strict, without rowid`,
  'create index stock_change_record on stock_change (kind, record_id)',
  // Springs of a file came into an earlier version, which kept them as it found them.
  `insert or ignore into spring
      (tray, supplier_ref, height_mm, thickness_mm, length_mm, barrel_mm, spring_end, material, in_stock, price, note, extra)
    select coalesce(said.value ->> 'tray', ''), said.value ->> 'supplierRef',
      cast(said.value ->> 'heightMm' as real), cast(said.value ->> 'thicknessMm' as real),
      cast(said.value ->> 'lengthMm' as real), cast(said.value ->> 'barrelMm' as real),
      said.value ->> 'end', said.value ->> 'material', said.value ->> 'inStock', said.value ->> 'price', said.value ->> 'note',
      json_remove(said.value, '$.tray', '$.supplierRef', '$.heightMm', '$.thicknessMm', '$.lengthMm', '$.barrelMm', '$.end',
        '$.material', '$.inStock', '$.price', '$.note')
    from kept_section, json_each(kept_section.content) as said
    where kept_section.name = 'springs' and ${readable}`,
  // What could not be taken up stays as it was written.
  `update kept_section set name = 'springsAsWritten', content = (
      select json_group_array(json(said.value)) from json_each(kept_section.content) as said
      where said.type = 'object' and not coalesce((${readable}), 0)
    ) where name = 'springs'`,
  "delete from kept_section where name = 'springsAsWritten' and content = '[]'",
]

/** The owner's springs and suppliers' lists, what is to be ordered, and what revisions remember of both. */
export const up = async (db: Kysely<unknown>): Promise<void> => {
  for (const statement of statements) await sql.raw(statement).execute(db)
}
