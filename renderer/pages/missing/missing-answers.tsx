import { useState } from 'react'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import type { MissingAnswer, MissingSolution } from '../../../core/trains/missing-counts.ts'
import { figure } from '../../../core/wording/figure.ts'
import {
  countsText,
  decidingSentence,
  missingRemark,
  missingSentence,
  nearestSentence,
  unboundSentence,
} from '../../../core/wording/missing-sentence.ts'
import { Working } from '../../components/working.tsx'

/** Answers shown at once. */
const most = 12

interface MissingAnswersProps {
  readonly answer: MissingAnswer
  /** What is said where nothing is looked for. */
  readonly nothing: string
  readonly note: string
  readonly busy: boolean
  readonly onTake: (solution: MissingSolution) => void
}

const Answer = ({
  solution,
  unknown,
  busy,
  onTake,
}: Pick<MissingAnswersProps, 'busy' | 'onTake'> & {
  readonly solution: MissingSolution
  readonly unknown: MissingAnswer['unknown']
}) => {
  const { counts, rate, remarks, working } = solution
  return (
    <li className="missing-answer">
      <dl>
        {unknown.map((key) => (
          <div key={key}>
            <dt>{caliberFields[key].label}</dt>
            <dd>{counts[key]}</dd>
          </div>
        ))}
        {rate !== null && (
          <div className="missing-rate">
            <dt>Beat rate</dt>
            <dd>
              {figure(rate.valueOf())} <span className="unit">vph</span>
            </dd>
          </div>
        )}
      </dl>
      <div className="missing-why">
        {working.map((step) => (
          <Working key={step.formula} step={step} />
        ))}
        {remarks.map((remark) => (
          <p key={missingRemark(remark)} className="quiet">
            {missingRemark(remark)}
          </p>
        ))}
      </div>
      <button
        type="button"
        className="plain-button"
        disabled={busy}
        aria-label={`Take over ${countsText(counts)}`}
        onClick={() => onTake(solution)}
      >
        Take over
      </button>
    </li>
  )
}

/** What was found: the answers ranked, what would decide between them, or what comes nearest. */
export const MissingAnswers = ({ answer, nothing, note, busy, onTake }: MissingAnswersProps) => {
  const [all, setAll] = useState(false)
  const { unknown, unbound, solutions, nearest, decide } = answer
  const shown = all ? solutions : solutions.slice(0, most)
  return (
    <section className="missing-found" aria-labelledby="missing-found">
      <h2 id="missing-found" aria-live="polite">
        {unknown.length > 0 ? missingSentence(answer) : unbound.length > 0 ? 'This cannot be worked out yet.' : nothing}
      </h2>
      {unbound.map((each) => (
        <p key={each.key}>{unboundSentence(each)}</p>
      ))}
      {shown.length > 0 && (
        <ol className="missing-answers">
          {shown.map((solution) => (
            <Answer
              key={countsText(solution.counts)}
              solution={solution}
              unknown={unknown}
              busy={busy}
              onTake={onTake}
            />
          ))}
        </ol>
      )}
      {shown.length < solutions.length && (
        <button type="button" className="plain-button" onClick={() => setAll(true)}>
          Show all {solutions.length} answers
        </button>
      )}
      {nearest.length > 0 && (
        <>
          <h3>What comes nearest</h3>
          <ul className="missing-nearest">
            {nearest.map((each) => (
              <li key={countsText(each.counts)}>{nearestSentence(each)}</li>
            ))}
          </ul>
        </>
      )}
      {decide.length > 0 && (
        <>
          <h3>What would decide</h3>
          {decide.map((each) => (
            <p key={each.kind}>{decidingSentence(each)}</p>
          ))}
        </>
      )}
      {solutions.length > 0 && (
        <p className="quiet missing-note">
          Counts that are worked out fit the figures; they are not the maker’s word. Count what is left of the part, and
          try the depth before you order or cut. Taken over, they stand as readings of their own with the note “{note}”;
          what was printed stays, and Ctrl Z takes them back.
        </p>
      )}
    </section>
  )
}
