import { Link } from 'wouter'
import type { MotionWorkFinding } from '../../../core/bench/counted-motion-work.ts'
import type { BenchFinding } from '../../../core/bench/foreign-part.ts'
import { figure } from '../../../core/wording/figure.ts'
import {
  benchSentences,
  explanationSentences,
  motionWorkSentence,
  putBackSentence,
} from '../../../core/wording/foreign-part-sentence.ts'
import { OutcomeMark } from '../../components/outcome-mark.tsx'
import { Working } from '../../components/working.tsx'

interface CountedAnswerProps {
  readonly answer: { readonly found: BenchFinding } | { readonly refused: string }
  readonly motionWork: MotionWorkFinding | null
  readonly caliberId: number
}

const Finding = ({ finding, caliberId }: { finding: BenchFinding; caliberId: number }) => {
  const { bench, specifiedVph, difference, putBack, explanations, missing } = finding
  const [first = '', ...others] = benchSentences(finding)
  const off = difference !== null && Math.abs(difference.vph) > 0.5
  return (
    <>
      {bench !== null && (
        <div className={`counted-rate ${off ? 'outcome-disagrees' : 'outcome-agrees'}`}>
          <OutcomeMark outcome={off ? 'disagrees' : 'agrees'} />
          <p className="hero">
            {figure(bench.vph.valueOf(), 1)} <span className="unit">vph</span>
          </p>
          <p className="quiet">{specifiedVph !== null && `specified ${figure(specifiedVph, 1)}`}</p>
        </div>
      )}
      <p className="counted-says" aria-live="polite">
        {first}
      </p>
      {bench !== null && <Working step={bench.working} />}
      {missing[0] !== undefined && (
        <p>
          <Link href={`/caliber/${caliberId}/edit/${missing[0]}`}>Enter it for the caliber</Link>, or count it here.
        </p>
      )}
      {others.map((sentence) => (
        <p className="counted-says" key={sentence}>
          {sentence}
        </p>
      ))}
      {explanations.length > 0 && (
        <section aria-labelledby="explains">
          <h2 id="explains">What would explain it</h2>
          <ol className="explanations">
            {explanations.map((one) => {
              const { says, remarks } = explanationSentences(one)
              return (
                <li key={`${one.field} ${one.there}`}>
                  <h3>{says}</h3>
                  <Working step={one.rate.working} />
                  {remarks !== '' && <p className="quiet">{remarks}</p>}
                </li>
              )
            })}
          </ol>
        </section>
      )}
      {putBack.length > 0 && (
        <section aria-labelledby="put-back">
          <h2 id="put-back">Put back to the specification</h2>
          <ul className="explanations">
            {putBack.map((part) => (
              <li key={part.field}>
                <h3 className={part.restores ? 'outcome-agrees' : 'outcome-disagrees'}>
                  <OutcomeMark outcome={part.restores ? 'agrees' : 'disagrees'} /> {putBackSentence(part, specifiedVph)}
                </h3>
                <Working step={part.rate.working} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}

/** What the counts and observations come to, the plainest first, with every sum. */
export const CountedAnswer = ({ answer, motionWork, caliberId }: CountedAnswerProps) => (
  <div className="counted-answer">
    {'refused' in answer ? (
      <p className="problem">{answer.refused}</p>
    ) : (
      <Finding finding={answer.found} caliberId={caliberId} />
    )}
    {motionWork !== null && (
      <section aria-labelledby="motion-work">
        <h2 id="motion-work">Motion work</h2>
        <p className={`counted-motion ${motionWork.holds ? 'outcome-agrees' : 'outcome-disagrees'}`}>
          <OutcomeMark outcome={motionWork.holds ? 'agrees' : 'disagrees'} />
          <span>{motionWorkSentence(motionWork)}</span>
        </p>
      </section>
    )}
    <p className="caution">
      A part that fits by its count may still not fit by its module, height or pivots. Let the mainspring down before
      you take the train out to count.
    </p>
  </div>
)
