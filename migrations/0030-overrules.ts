import { type Kysely, sql } from 'kysely'

const statements = [
  `create table overrule (
    caliber_id integer not null references caliber (id) on delete cascade,
    position integer not null,
    proof text not null,
    severity text not null check (severity in ('accepted', 'doubtful', 'wrong')),
    reason text not null check (trim(reason) <> ''),
    outcome text not null check (outcome in ('agrees', 'disagrees', 'doubtful', 'cannot-check', 'outside-range')),
    extra text not null default '{}',
    primary key (caliber_id, position)
  ) strict, without rowid`,
  'create unique index overrule_proof on overrule (caliber_id, proof)',
  // A file of a later version may have come into an earlier one, which kept its overrules as it found them.
  `insert or ignore into overrule
    select caliber.id, said.key, said.value ->> 'proof', said.value ->> 'severity', said.value ->> 'reason',
      said.value ->> 'of', json_remove(said.value, '$.proof', '$.severity', '$.reason', '$.of')
    from caliber, json_each(caliber.extra, '$.overrules') as said
    where json_type(caliber.extra, '$.overrules') = 'array' and said.type = 'object'
      and json_type(said.value, '$.proof') = 'text' and json_type(said.value, '$.reason') = 'text'`,
  `update caliber set extra = iif(
      json_type(extra, '$.overrules') = 'array'
        and json_array_length(extra, '$.overrules') = (select count(*) from overrule where caliber_id = caliber.id),
      json_remove(extra, '$.overrules'),
      json_set(json_remove(extra, '$.overrules'), '$.overrulesAsWritten', json_extract(extra, '$.overrules'))
    ) where json_type(extra, '$.overrules') is not null`,
]

/** What the owner overruled of a caliber's findings, one row a proof; `outcome` is the one that it was given for. */
export const up = async (db: Kysely<unknown>): Promise<void> => {
  for (const statement of statements) await sql.raw(statement).execute(db)
}
