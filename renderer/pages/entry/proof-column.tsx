import { memo } from 'react'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { listFields } from '../../../core/fields/list-fields.ts'
import type { Outcome } from '../../../core/proofs/proof.ts'
import { OutcomeMark, outcomeWords } from '../../components/outcome-mark.tsx'
import { cellOfField, cellOfList } from './cells.ts'
import { goToCell } from './form-walk.ts'
import type { TitledReport } from './proof-marks.ts'

const labelOf = (key: string): string =>
  Object.hasOwn(listFields, key)
    ? listFields[key as keyof typeof listFields].label
    : Object.hasOwn(caliberFields, key)
      ? caliberFields[key as CaliberFieldKey].label
      : key

const goToField = (key: string) =>
  goToCell(
    Object.hasOwn(listFields, key)
      ? cellOfList(key as keyof typeof listFields, 0)
      : cellOfField(key as CaliberFieldKey),
  )

const order: readonly Outcome[] = ['disagrees', 'doubtful', 'outside-range', 'agrees', 'cannot-check']

/** How many proofs stand how, in words. */
export const proofSummary = (reports: readonly TitledReport[]): string =>
  order
    .map((outcome) => ({ outcome, count: reports.filter((report) => report.outcome === outcome).length }))
    .filter(({ count }) => count > 0)
    .map(({ outcome, count }) => `${count} ${count === 1 || outcome !== 'agrees' ? outcomeWords[outcome] : 'agree'}`)
    .join(' · ')

const Fields = ({ keys }: { keys: readonly string[] }) => (
  <span className="entry-proof-fields">
    {keys.map((key) => (
      <button type="button" className="entry-link" key={key} onClick={() => goToField(key)}>
        {labelOf(key)}
      </button>
    ))}
  </span>
)

/** The proofs of what is typed, beside the form: those that can speak first, then what the others still want. */
export const ProofColumn = memo(function ProofColumn({ reports }: { reports: readonly TitledReport[] }) {
  const spoken = reports.filter(({ outcome }) => outcome !== 'cannot-check')
  const waiting = reports.filter(({ outcome }) => outcome === 'cannot-check')
  return (
    <section className="entry-proofs" aria-label="Proofs">
      <h2>Proofs</h2>
      <p className="entry-proof-summary">{proofSummary(reports)}</p>
      <ul>
        {spoken.map(({ proof, title, outcome, message, working, fields }) => (
          <li key={proof} className={`entry-proof is-${outcome}`} data-proof={proof} data-outcome={outcome}>
            <h3>
              <OutcomeMark outcome={outcome} />
              {title}
              <span className={`entry-outcome is-${outcome}`}>{outcomeWords[outcome]}</span>
            </h3>
            <p>{message}</p>
            {working.map(({ formula, gives }) => (
              <p className="entry-working" key={formula}>
                {formula}
                {formula.includes('=') ? '' : ` = ${typeof gives === 'number' ? Number(gives.toFixed(3)) : gives}`}
              </p>
            ))}
            {outcome === 'agrees' ? null : <Fields keys={fields} />}
          </li>
        ))}
      </ul>
      {waiting.length > 0 ? (
        <>
          <h3 className="entry-waiting-head">Cannot check yet</h3>
          <ul>
            {waiting.map(({ proof, title, missing }) => (
              <li key={proof} className="entry-waiting" data-proof={proof} data-outcome="cannot-check">
                <OutcomeMark outcome="cannot-check" />
                <div>
                  {title}
                  <Fields keys={missing} />
                </div>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  )
})
