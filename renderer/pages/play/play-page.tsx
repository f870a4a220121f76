import { useEffect, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { PlayFinding } from '../../../core/bench/judge-play.ts'
import { playPlaceKeys } from '../../../core/bench/play-places.ts'
import { leverWhereThereIsOne, playMovementOf, playPlacesOf } from '../../../core/bench/play-places-of.ts'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { freedomLine } from '../../../core/wording/freedom-sentence.ts'
import { playCautions } from '../../../core/wording/play-cautions.ts'
import { playLine, playRules, playSummary } from '../../../core/wording/play-sentence.ts'
import { useFamily } from '../../api/use-family.ts'
import { useCommands } from '../../components/commands.ts'
import { ReadCaliber } from '../../components/read-caliber.tsx'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { walkFields } from '../../components/walk-fields.ts'
import { CylinderPart } from './cylinder-part.tsx'
import { LeverPart } from './lever-part.tsx'
import { PlayArbor, playRowNames } from './play-arbor.tsx'
import { PlayAsked } from './play-asked.tsx'
import { nothingTyped, type PlayTyped, playPlace } from './play-place.ts'
import { scaleOf } from './play-row.tsx'
import { readLever } from './read-lever.ts'
import { readPlayRow } from './read-play-row.ts'
import { typedMeasured } from './typed-measured.ts'
import './play-page.css'

interface OfCaliber {
  readonly id: number
  readonly name: string
  readonly values: CaliberValues
}

const Bench = ({ caliber }: { caliber?: OfCaliber }) => {
  const [, go] = useLocation()
  const page = useRef<HTMLElement>(null)
  const [typed, setTyped] = useState<PlayTyped>(() => playPlace.get(caliber?.id) ?? nothingTyped)
  const change = (next: PlayTyped) => {
    playPlace.set(caliber?.id, next)
    setTyped(next)
  }
  const toFirst = () => page.current?.querySelector<HTMLElement>('.play-cell input')?.focus({ preventScroll: true })
  useEffect(toFirst, [])
  const clear = () => {
    change(nothingTyped)
    toFirst()
  }
  const back = caliber === undefined ? '/' : `/caliber/${caliber.id}`
  const backWords = caliber === undefined ? 'Back to the list' : 'Back to the caliber'

  const usual = caliber === undefined ? 'watch' : playMovementOf(caliber.values)
  const movement = typed.movement || usual
  const places =
    caliber === undefined ? leverWhereThereIsOne(playPlaceKeys, movement) : playPlacesOf(caliber.values, movement)
  const off = typedMeasured({ label: 'Readings may be off by', kind: 'length', possible: [0, 1] }, typed.offMm, 0)
  const arbors = places.map((place) => {
    const row = (name: (typeof playRowNames)[number]) =>
      readPlayRow(typed.cells, { movement, place, name, offMm: off.value })
    return { place, rows: { end: row('end'), upper: row('upper'), lower: row('lower') } }
  })
  const found = arbors.flatMap(({ rows }) =>
    playRowNames.flatMap((name): { name: typeof name; finding: PlayFinding }[] => {
      const { finding } = rows[name]
      return finding === undefined ? [] : [{ name, finding }]
    }),
  )
  // The book is of levers with stones: a pin lever has neither club nor ratchet teeth.
  const hasLever = movement === 'watch' && caliber?.values.escapement !== 'pin-lever'
  const lever = readLever(typed)
  const freedoms = hasLever ? lever.freedoms.flatMap(({ finding }) => finding ?? []) : []
  const copy = () => {
    const lines = [...found.map(({ name, finding }) => playLine(name, finding)), ...freedoms.map(freedomLine)]
    if (lines.length === 0) return say('Nothing is measured yet.')
    const heading = caliber === undefined ? 'Play on the bench' : `Play on the bench: ${caliber.name}`
    return navigator.clipboard.writeText([heading, ...lines].join('\n')).then(
      () => say('Copied what was measured.'),
      () => say('It could not be copied.'),
    )
  }
  useCommands([
    { label: backWords, keys: ['Escape'], run: () => go(back) },
    { label: 'Copy what was measured', keys: ['C'], run: () => void copy() },
    { label: 'Print the sheet of play', keys: ['Ctrl+P'], run: () => print() },
    { label: 'Clear what was measured', keys: [], run: clear },
  ])
  return (
    <article className="play-page" data-makers={typed.makers} ref={page} onKeyDown={walkFields(() => go(back))}>
      <header className="play-head">
        <h1>Play on the bench</h1>
        {caliber && (
          <p>
            <Link href={back}>{caliber.name}</Link>
          </p>
        )}
        <p className="head-actions">
          <button type="button" className="plain-button" onClick={clear}>
            Clear
          </button>
          <button type="button" className="plain-button" onClick={() => void copy()}>
            Copy <kbd>C</kbd>
          </button>
          <button type="button" className="plain-button" onClick={() => print()}>
            Print <kbd>Ctrl P</kbd>
          </button>
          <Link href={back} className="plain-button">
            {backWords} <kbd>Esc</kbd>
          </Link>
        </p>
      </header>
      <ul className="caution play-cautions" aria-label="Before you try a pivot">
        {Object.entries(playCautions).map(([key, text]) => (
          <li key={key}>{text}</li>
        ))}
      </ul>
      <ul className="play-rules">
        {playRules.map((rule) => (
          <li key={rule}>{rule}</li>
        ))}
      </ul>
      <PlayAsked typed={typed} movement={movement} off={off} onChange={change} />
      <p className="play-sum" role="status">
        {playSummary(found.map(({ finding }) => finding))}
      </p>
      <section className="play-part" aria-labelledby="play-pivots">
        <h2 id="play-pivots">Arbors and pivots</h2>
        <p className="quiet play-hint">
          In millimetres, or as your gauge reads: 0.04, 4/100, 18/1000, 40 µm, 0.002 in. A hole with its pivot gives the
          side-shake. Nothing of this page is put into the library.
        </p>
        <p className="quiet play-hint">
          The strips begin at nothing; a tick is {scaleOf(movement, 'end').step} mm of end-shake,{' '}
          {scaleOf(movement, 'upper').step} mm of side-shake. Between the strokes is what is in print, the lozenge is
          the reading with what it may be off.
        </p>
        <div className="play-columns" aria-hidden="true">
          <span>Hole</span>
          <span>Pivot</span>
          <span>Play</span>
          {typed.makers && <span>Maker’s figure</span>}
          <span>In print</span>
          <span>Verdict</span>
        </div>
        {arbors.map(({ place, rows }) => (
          <PlayArbor
            key={place}
            place={place}
            rows={rows}
            movement={movement}
            makers={typed.makers}
            onType={(key, text) => change({ ...typed, cells: { ...typed.cells, [key]: text } })}
          />
        ))}
      </section>
      {movement === 'cylinder' && (
        <CylinderPart text={typed.cylinderMm} onType={(cylinderMm) => change({ ...typed, cylinderMm })} />
      )}
      {hasLever && <LeverPart typed={typed} lever={lever} onChange={change} />}
    </article>
  )
}

const OfEntry = ({ id, entry }: { id: number; entry: CaliberEntry }) => {
  const own = useMemo(() => readEntry(entry).caliber, [entry])
  const { values } = useFamily(id, own)
  return <Bench caliber={{ id, name: `${entry.maker} ${entry.designation}`, values }} />
}

/** End-shake, side-shake and the freedoms of the escapement, as tried at a strip-down, beside what is in print. */
export const PlayPage = ({ caliberId }: { caliberId?: number | undefined }) => {
  useTitle('Play on the bench')
  return caliberId === undefined ? (
    <Bench />
  ) : (
    <ReadCaliber id={caliberId} otherwise={<Link href="/play">Go on without a caliber</Link>}>
      {(entry) => <OfEntry id={caliberId} entry={entry} />}
    </ReadCaliber>
  )
}
