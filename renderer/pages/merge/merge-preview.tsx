import type { CaliberEntry, EntryReading } from '../../../core/exchange/library-file.ts'
import { listFields } from '../../../core/fields/list-fields.ts'
import { labelOf } from '../../../core/record/label-of.ts'
import { mergeEntries } from '../../../core/record/merge-entries.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { overruleSentence } from '../../../core/wording/severity.ts'

const where = ({ source, page }: EntryReading): string =>
  [source, page && `p. ${page}`].filter(Boolean).join(' ') || 'no source'

const Print = ({ reading }: { reading: EntryReading }) => (
  <>
    {reading.printed} <span className="quiet">{where(reading)}</span>
  </>
)

/** What merging would bring from one record to the other. */
export const MergePreview = ({ keep, from }: { keep: CaliberEntry; from: CaliberEntry }) => {
  const { entry, filled, beside, lines, overrules, names } = mergeEntries(keep, from)
  const nothing = filled.length + beside.length + lines.length + overrules.length + names.length === 0
  return (
    <>
      {nothing ? <p>The other record says nothing that this one does not.</p> : null}
      {beside.length > 0 ? (
        <table className="merge-beside">
          <caption>Stated by both: the value here goes on counting, the other stands beside it.</caption>
          <thead>
            <tr>
              <th scope="col">Field</th>
              <th scope="col">Counts</th>
              <th scope="col">Stands beside it</th>
            </tr>
          </thead>
          <tbody>
            {beside.map(({ key, chosen, added }) => (
              <tr key={key}>
                <th scope="row">{labelOf(key)}</th>
                <td>
                  <Print reading={chosen} />
                </td>
                <td>
                  {added.map((reading, index) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: a reading is its place; two may say the same.
                    <div key={index}>
                      <Print reading={reading} />
                    </div>
                  ))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      {filled.length > 0 ? (
        <>
          <h2>Stated only by the other</h2>
          <dl className="merge-filled">
            {filled.map((key) => (
              <div key={key}>
                <dt>{labelOf(key)}</dt>
                <dd>
                  {(entry.fields[key] ?? []).map((reading, index) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: a reading is its place; two may say the same.
                    <div key={index}>
                      <Print reading={reading} />
                    </div>
                  ))}
                </dd>
              </div>
            ))}
          </dl>
        </>
      ) : null}
      {lines.map(({ list, added }) => (
        <p key={list}>
          {listFields[list].label}: {added === 1 ? 'one line comes' : `${added} lines come`} over
          {keep[list].length > 0 ? ', after those that are here. Look whether they count the same things twice' : ''}.
        </p>
      ))}
      {overrules.map(({ proof, severity, reason }) => (
        <p key={proof}>
          The overrule of “{proofTitle(proof)}” comes over. {overruleSentence({ severity, reason, applies: true })}
        </p>
      ))}
      {names.length > 0 ? <p>It is also known as {names.join(', ')} from then on.</p> : null}
      <p>
        {from.maker} {from.designation} is then no record of its own any more.
      </p>
    </>
  )
}
