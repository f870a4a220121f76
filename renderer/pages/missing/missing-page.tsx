import { useEffect, useMemo, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { formatQuantity } from '../../../core/quantities/format-quantity.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { withCounts } from '../../../core/record/with-counts.ts'
import { type CountKey, countKeys } from '../../../core/trains/cuttable-counts.ts'
import { findMissingCounts, type MissingSolution } from '../../../core/trains/missing-counts.ts'
import { wordFailure } from '../../../core/wording/failure.ts'
import { countsText, nothingMissingSentence, workedOutNote } from '../../../core/wording/missing-sentence.ts'
import { call, useChange } from '../../api/hooks.ts'
import { useFamily } from '../../api/use-family.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { MissingValue } from '../../components/missing-value.tsx'
import { ReadCaliber } from '../../components/read-caliber.tsx'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { wordChoice } from '../../components/word-value.ts'
import { draftMirror } from '../entry/draft-mirror.ts'
import { MissingAnswers } from './missing-answers.tsx'
import { MissingTrain } from './missing-train.tsx'
import './missing-page.css'

const Found = ({ id, entry }: { id: number; entry: CaliberEntry }) => {
  const [, go] = useLocation()
  const read = useMemo(() => readEntry(entry), [entry])
  const caliber = useFamily(id, read.caliber)
  const { values } = caliber
  // Until a count is pressed, what is absent is looked for.
  const [pressed, setPressed] = useState<readonly CountKey[]>()
  const [problem, setProblem] = useState('')
  const saving = useChange('caliber.save')
  const answer = useMemo(() => findMissingCounts(caliber, pressed), [caliber, pressed])
  const wanted = pressed ?? [...answer.unknown, ...answer.unbound.map(({ key }) => key)]
  const unknown = new Set(wanted)
  const note = workedOutNote(answer.rests, values)
  const name = `${entry.maker} ${entry.designation}`

  const toggle = (key: CountKey) =>
    setPressed(countKeys.filter((each) => (each === key ? !unknown.has(key) : unknown.has(each))))
  const take = async ({ counts }: MissingSolution) => {
    setProblem('')
    try {
      const { draft } = await call('draft.read', { caliberId: id })
      // The draft would be let go by the saving, or would undo it unseen when it is saved itself.
      if (draft !== null || draftMirror.read(id) !== null) {
        setProblem(wordFailure({ code: 'draft-not-saved', details: { name } }))
        return
      }
      await saving.mutateAsync({ caliberId: id, entry: withCounts(entry, counts, note) })
      say(`Taken over: ${countsText(counts)}. Ctrl Z takes it back.`)
      go(`/caliber/${id}`)
    } catch (error) {
      setProblem(failureText(error))
    }
  }
  useEffect(() => document.getElementById('main')?.focus({ preventScroll: true }), [])
  useCommands([
    { label: 'Back to the caliber', keys: ['Escape'], run: () => go(`/caliber/${id}`) },
    { label: 'Look for what is absent', keys: [], run: () => setPressed(undefined) },
  ])

  const { beatRateVph, secondsDisplay } = values
  return (
    <article className="missing-page">
      <header className="page-head">
        <h1>Missing counts</h1>
        <p>
          <Link href={`/caliber/${id}`}>{name}</Link>
        </p>
        <p className="head-actions">
          {pressed && (
            <button type="button" className="plain-button" onClick={() => setPressed(undefined)}>
              Look for what is absent
            </button>
          )}
          <Link href={`/caliber/${id}`} className="plain-button">
            Back to the caliber <kbd>Esc</kbd>
          </Link>
        </p>
      </header>
      <p className="missing-stated">
        <span>
          <span className="quiet">Beat rate</span>{' '}
          {beatRateVph === undefined ? (
            <MissingValue id={id} field="beatRateVph" />
          ) : (
            `${formatQuantity('rate', beatRateVph)} vph`
          )}
        </span>
        <span>
          <span className="quiet">Seconds</span>{' '}
          {secondsDisplay === undefined ? (
            <MissingValue id={id} field="secondsDisplay" />
          ) : (
            wordChoice('secondsDisplay', secondsDisplay)
          )}
        </span>
        <span>
          <span className="quiet">Motion work</span> {values.dialHours === '24' ? 24 : 12} to one
        </span>
      </p>
      <p className="quiet" id="missing-how">
        Press a count to look for it, as for a wheel that is lost. A question mark is looked for.
      </p>
      <MissingTrain values={values} unknown={unknown} onToggle={toggle} />
      <MissingAnswers
        key={wanted.join()}
        answer={answer}
        nothing={pressed ? 'Nothing is looked for. Press the count that is lost.' : nothingMissingSentence(values)}
        note={note}
        busy={saving.isPending}
        onTake={(solution) => void take(solution)}
      />
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </article>
  )
}

/** The counts that a caliber does not state, or that are lost, worked out from what it does state. */
export const MissingPage = ({ id }: { id: number }) => {
  useTitle('Missing counts')
  return <ReadCaliber id={id}>{(entry) => <Found id={id} entry={entry} />}</ReadCaliber>
}
