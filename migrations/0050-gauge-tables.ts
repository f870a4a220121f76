import { type Kysely, sql } from 'kysely'

const said = (path: string) => `kept_section.content ->> (said.fullkey || '${path}')`
const typeOf = (path: string) => `json_type(kept_section.content, said.fullkey || '${path}')`
const rows = `json_each(kept_section.content, said.fullkey || '.rows') as line`
const row = (path: string) => `kept_section.content ->> (line.fullkey || '${path}')`
const typeOfRow = (path: string) => `json_type(kept_section.content, line.fullkey || '${path}')`

/** A table of the form that this version reads; whatever else stands in the file is left as written. */
const readable = `said.type = 'object'
  and ${typeOf('.name')} = 'text' and trim(${said('.name')}) <> ''
  and ${said('.measures')} in ('thickness', 'height')
  and coalesce(${said('.place')}, 'first') in ('first', 'second')
  and coalesce(${typeOf('.source')}, 'text') = 'text'
  and coalesce(${typeOf('.page')}, 'text') = 'text'
  and ${typeOf('.rows')} = 'array'
  and (select count(*) from ${rows}) between 1 and 1000
  and not exists (
    select 1 from ${rows} where not coalesce(
      ${typeOfRow('.number')} = 'text' and trim(${row('.number')}) glob '[0-9]*'
      and coalesce(${typeOfRow('.printed')}, 'text') = 'text'
      and ${typeOfRow('.mm')} in ('real', 'integer')
      and ${row('.mm')} >= iif(${said('.measures')} = 'height', 0.1, 0.01)
      and ${row('.mm')} <= iif(${said('.measures')} = 'height', 120, 3), 0)
  )
  and (select count(distinct replace(${row('.number')}, ' ', '')) from ${rows}) = (select count(*) from ${rows})
  and not exists (
    select 1 from json_each(kept_section.content) as other
    where other.key < said.key
      and lower(trim(kept_section.content ->> (other.fullkey || '.name'))) = lower(trim(${said('.name')}))
      and kept_section.content ->> (other.fullkey || '.measures') = ${said('.measures')}
  )`

const statements = [
  `create table gauge (
    id integer primary key autoincrement,
    line text not null
  ) strict`,
  // A check cannot be widened in its place.
  `create table stock_change_wider (
    revision_id integer not null references revision (id) on delete cascade,
    position integer not null,
    kind text not null check (kind in ('spring', 'order', 'gauge')),
    record_id integer not null,
    before text,
    after text,
    primary key (revision_id, position)
  ) strict, without rowid`,
  `insert into stock_change_wider (revision_id, position, kind, record_id, before, after)
    select revision_id, position, kind, record_id, before, after from stock_change`,
  'drop table stock_change',
  'alter table stock_change_wider rename to stock_change',
  'create index stock_change_record on stock_change (kind, record_id)',
  // Gauge tables of a file came into an earlier version, which kept them as it found them.
  `insert into gauge (line)
    select kept_section.content -> said.fullkey from kept_section, json_each(kept_section.content) as said
    where kept_section.name = 'gauges' and json_type(kept_section.content) = 'array' and ${readable}
    order by said.key`,
  `update kept_section set name = 'gaugesAsWritten', content = case json_type(content)
      when 'array' then (
        select json_group_array(json(kept_section.content -> said.fullkey))
        from json_each(kept_section.content) as said where not coalesce((${readable}), 0)
      ) else content end
    where name = 'gauges'`,
  "delete from kept_section where name = 'gaugesAsWritten' and content = '[]'",
]

/** The tables of old gauges that their owner enters, and what revisions remember of them. */
export const up = async (db: Kysely<unknown>): Promise<void> => {
  for (const statement of statements) await sql.raw(statement).execute(db)
}
