import { useEffect, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { benchTrain, type CountedTeeth } from '../../../core/bench/bench-train.ts'
import { countedMotionWork, motionWorkKeys } from '../../../core/bench/counted-motion-work.ts'
import { foreignPart } from '../../../core/bench/foreign-part.ts'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import type { CountKey } from '../../../core/trains/cuttable-counts.ts'
import { useFamily } from '../../api/use-family.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { useCommands } from '../../components/commands.ts'
import { ReadCaliber } from '../../components/read-caliber.tsx'
import { answerOf, typedField, typedGain } from '../../components/typed-figure.ts'
import { useTitle } from '../../components/use-title.ts'
import { walkFields } from '../../components/walk-fields.ts'
import { CountedAnswer } from './counted-answer.tsx'
import { type CountedTyped, countedPlace, nothingCounted } from './counted-place.ts'
import { CountedRow } from './counted-row.tsx'
import './counted-page.css'

const Counts = ({ id, entry }: { id: number; entry: CaliberEntry }) => {
  const [, go] = useLocation()
  const page = useRef<HTMLElement>(null)
  const own = useMemo(() => readEntry(entry).caliber, [entry])
  const caliber = useFamily(id, own)
  const { values } = caliber
  const [typed, setTyped] = useState<CountedTyped>(() => countedPlace.get(id) ?? nothingCounted)
  const change = (next: CountedTyped) => {
    countedPlace.set(id, next)
    setTyped(next)
  }
  const clear = () => {
    change(nothingCounted)
    page.current?.querySelector('input')?.focus()
  }
  useEffect(() => page.current?.querySelector('input')?.focus(), [])
  useCommands([
    { label: 'Back to the caliber', keys: ['Escape'], run: () => go(`/caliber/${id}`) },
    { label: 'Clear what was counted', keys: [], run: clear },
  ])

  const figureOf = (field: CountKey) => typedField(field, typed.counts[field] ?? '')
  const trainKeys: readonly CountKey[] = benchTrain(caliber, {}).keys
  const sweepKeys: readonly CountKey[] =
    values.secondsDisplay === 'centre-indirect' ? ['sweepDriver', 'sweepPinion'] : []
  const counted: CountedTeeth = Object.fromEntries(
    [...trainKeys, ...sweepKeys, ...motionWorkKeys].flatMap((field) => {
      const { value } = figureOf(field)
      return value === undefined ? [] : [[field, value]]
    }),
  )
  const beatRate = typedField('beatRateVph', typed.beatRate)
  const gain = typedGain('Hands gain in a day', typed.gain)
  const answer = answerOf(() =>
    foreignPart(caliber, counted, {
      ...(beatRate.value === undefined ? {} : { beatRateVph: beatRate.value }),
      ...(gain.value === undefined ? {} : { handsGainSecondsPerDay: gain.value }),
      ...(typed.secondsHand === '' ? {} : { secondsHandTrue: typed.secondsHand === 'true' }),
    }),
  )
  const rows = (keys: readonly CountKey[]) =>
    keys.map((field) => (
      <CountedRow
        key={field}
        field={field}
        specified={values[field]}
        figure={figureOf(field)}
        onType={(text) => change({ ...typed, counts: { ...typed.counts, [field]: text } })}
      />
    ))
  const hasSeconds = values.secondsDisplay !== undefined && values.secondsDisplay !== 'none'
  return (
    <article className="counted-page" ref={page} onKeyDown={walkFields(() => go(`/caliber/${id}`))}>
      <header className="page-head">
        <h1>Counted on the bench</h1>
        <p>
          <Link href={`/caliber/${id}`}>
            {entry.maker} {entry.designation}
          </Link>
        </p>
        <p className="head-actions">
          <button type="button" className="plain-button" onClick={clear}>
            Clear
          </button>
          <Link href={`/play/${id}`} className="plain-button">
            Play
          </Link>
          <Link href={`/caliber/${id}`} className="plain-button">
            Back to the caliber <kbd>Esc</kbd>
          </Link>
        </p>
      </header>
      <div className="counted-body">
        <div className="counted-asked">
          <table>
            <thead>
              <tr>
                <th scope="col">Part</th>
                <th scope="col" className="figure">
                  Specified
                </th>
                <th scope="col" id="counted-column">
                  Counted
                </th>
                <th scope="col">
                  <span className="out-of-sight">Verdict</span>
                </th>
              </tr>
            </thead>
            <tbody>{rows(trainKeys)}</tbody>
            {sweepKeys.length > 0 && <tbody>{rows(sweepKeys)}</tbody>}
            <tbody>{rows(motionWorkKeys)}</tbody>
          </table>
          <p className="quiet counted-note">
            Count what you can reach; what is left open is taken as specified. Nothing of this page is put into the
            library.
          </p>
          <h2>Observed</h2>
          <div className="bench-fields">
            <BenchField
              label="Rate of the balance"
              name="observedRate"
              unit="vph"
              figure={beatRate}
              hint="as measured: 18 240, 5/s, 2.5 Hz"
              onType={(text) => change({ ...typed, beatRate: text })}
            />
            <BenchField
              label="Hands gain in a day"
              name="handsGain"
              unit="s"
              figure={gain}
              hint="a loss with a minus: -19 min"
              onType={(text) => change({ ...typed, gain: text })}
            />
            {hasSeconds && (
              <div className="bench-field">
                <label htmlFor="seconds-hand">Seconds hand</label>
                <select
                  id="seconds-hand"
                  value={typed.secondsHand}
                  onChange={({ target: { value } }) =>
                    change({ ...typed, secondsHand: value === 'true' || value === 'strays' ? value : '' })
                  }
                >
                  <option value="">not watched</option>
                  <option value="true">one turn a minute of the minute hand</option>
                  <option value="strays">strays from the minute hand</option>
                </select>
              </div>
            )}
          </div>
        </div>
        <CountedAnswer answer={answer} motionWork={countedMotionWork(values, counted)} caliberId={id} />
      </div>
    </article>
  )
}

/** The teeth of a movement beside those of its caliber: what rate they give, and which part would explain it. */
export const CountedPage = ({ id }: { id: number }) => {
  useTitle('Counted on the bench')
  return <ReadCaliber id={id}>{(entry) => <Counts id={id} entry={entry} />}</ReadCaliber>
}
