import { useEffect, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { amplitudeHelp } from '../../../core/bench/amplitude-help.ts'
import { rateWorking } from '../../../core/bench/rate-working.ts'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { rateFormNames } from '../../../core/wording/rate-help.ts'
import { useFamily } from '../../api/use-family.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { useCommands } from '../../components/commands.ts'
import { ReadCaliber } from '../../components/read-caliber.tsx'
import { answerOf, typedField, typedFigure } from '../../components/typed-figure.ts'
import { useTitle } from '../../components/use-title.ts'
import { walkFields } from '../../components/walk-fields.ts'
import { Working } from '../../components/working.tsx'
import { AmplitudeAnswer, LiftTables } from './rate-amplitude.tsx'
import { BalancePart } from './rate-balance.tsx'
import { ForkPart } from './rate-fork.tsx'
import './rate-page.css'

/** What stands in the fields until something is typed: a guess where no caliber is asked for. */
interface Start {
  readonly liftAngleDeg: string
  readonly beatRateVph: string
}
const guess: Start = { liftAngleDeg: '52', beatRateVph: '18000' }

const Help = ({ start, caliber }: { start: Start; caliber?: { readonly id: number; readonly name: string } }) => {
  const [, go] = useLocation()
  const [liftText, setLift] = useState(start.liftAngleDeg)
  const [rateText, setRate] = useState(start.beatRateVph)
  const [timeText, setTime] = useState('')
  const page = useRef<HTMLElement>(null)
  useEffect(() => page.current?.querySelector<HTMLElement>('input[name="liftTimeMs"]')?.focus(), [])
  const back = caliber === undefined ? '/' : `/caliber/${caliber.id}`
  useCommands([
    {
      label: caliber === undefined ? 'Back to the list' : 'Back to the caliber',
      keys: ['Escape'],
      run: () => go(back),
    },
  ])

  const lift = typedField('liftAngleDeg', liftText)
  const rate = typedField('beatRateVph', rateText)
  const time = typedFigure('Lift time', timeText, ['ms'])
  const answer =
    lift.value === undefined || rate.value === undefined || time.value === undefined
      ? null
      : answerOf(() =>
          amplitudeHelp({ liftAngleDeg: lift.value ?? 0, beatRateVph: rate.value ?? 0, liftTimeMs: time.value ?? 0 }),
        )
  const needs = [
    lift.value === undefined && 'the lift angle',
    rate.value === undefined && 'the beat rate',
    time.value === undefined && 'the lift time',
  ].filter((word) => word !== false)

  return (
    <article className="rate-page" ref={page} onKeyDown={walkFields(() => go(back))}>
      <header className="page-head">
        <h1>Rate and amplitude</h1>
        {caliber && (
          <p>
            for <Link href={back}>{caliber.name}</Link>
          </p>
        )}
        <p className="head-actions">
          <Link href={caliber === undefined ? '/play' : `/play/${caliber.id}`} className="plain-button">
            Play
          </Link>
          <Link href={back} className="plain-button">
            {caliber === undefined ? 'Back to the list' : 'Back to the caliber'} <kbd>Esc</kbd>
          </Link>
        </p>
      </header>
      <div className="bench-fields rate-asked">
        <BenchField
          label="Lift angle"
          name="liftAngleDeg"
          unit="°"
          figure={lift}
          hint={
            caliber === undefined
              ? '52° is a guess: take that of the caliber'
              : start.liftAngleDeg === ''
                ? 'not entered for this caliber'
                : 'as entered for the caliber'
          }
          onType={setLift}
        />
        <BenchField
          label="Beat rate"
          name="beatRateVph"
          unit="vph"
          figure={rate}
          hint="18 000, 5/s, 300/min or 2.5 Hz"
          onType={setRate}
        />
        <BenchField
          label="Lift time"
          name="liftTimeMs"
          unit="ms"
          figure={time}
          hint="from the noise of unlocking to that of the drop"
          onType={setTime}
        />
      </div>
      <section aria-labelledby="amplitude" aria-live="polite">
        <h2 id="amplitude">Amplitude</h2>
        {answer === null ? (
          <p className="quiet rate-waits">Type {needs.join(' and ')}.</p>
        ) : 'refused' in answer ? (
          <p className="problem">{answer.refused}</p>
        ) : (
          <AmplitudeAnswer help={answer.found} />
        )}
        <p className="quiet rate-note">
          For a balance in beat, which crosses the lift angle evenly about its middle. Beat error is not reckoned here.
        </p>
      </section>
      {lift.value !== undefined && rate.value !== undefined && (
        <LiftTables
          liftAngleDeg={lift.value}
          beatRateVph={rate.value}
          amplitudeDeg={answer !== null && 'found' in answer ? answer.found.exact : undefined}
          of={caliber?.name}
        />
      )}
      {rate.value !== undefined && (
        <section aria-labelledby="rate-forms">
          <h2 id="rate-forms">The rate in other forms</h2>
          <dl className="rate-forms">
            {rateWorking(rate.value).map(({ form, working }) => (
              <div key={form}>
                <dt>{rateFormNames[form]}</dt>
                <dd>
                  <Working step={working} />
                </dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {rate.value !== undefined && <BalancePart beatRateVph={rate.value} />}
      <ForkPart />
    </article>
  )
}

const OfCaliber = ({ id, entry }: { id: number; entry: CaliberEntry }) => {
  const own = useMemo(() => readEntry(entry).caliber, [entry])
  const { liftAngleDeg, beatRateVph } = useFamily(id, own).values
  const start = { liftAngleDeg: String(liftAngleDeg ?? ''), beatRateVph: String(beatRateVph ?? '') }
  // A base that comes to be known fills the fields anew.
  return (
    <Help
      key={`${start.liftAngleDeg} ${start.beatRateVph}`}
      start={start}
      caliber={{ id, name: `${entry.maker} ${entry.designation}` }}
    />
  )
}

const AskedCaliber = ({ id }: { id: number }) => (
  <ReadCaliber id={id} otherwise={<Link href="/rate">Go on without a caliber</Link>}>
    {(entry) => <OfCaliber id={id} entry={entry} />}
  </ReadCaliber>
)

/** A help at the bench: amplitude from the lift time, the forms of a rate, balance and hairspring. */
export const RatePage = ({ caliberId }: { caliberId?: number | undefined }) => {
  useTitle('Rate and amplitude')
  return caliberId === undefined ? <Help start={guess} /> : <AskedCaliber id={caliberId} />
}
