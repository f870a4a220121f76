import { useVirtualizer } from '@tanstack/react-virtual'
import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react'
import { Link } from 'wouter'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { traysOf } from '../../../core/springs/find-springs.ts'
import { rankSprings } from '../../../core/springs/rank-springs.ts'
import { type SpringVerdict, springVerdicts } from '../../../core/springs/spring-reasons.ts'
import { figure } from '../../../core/wording/figure.ts'
import { useSprings } from '../../api/hooks.ts'
import { useBookOut } from '../../api/use-book-out.ts'
import { failureText } from '../../components/failure-text.ts'
import { rootPx } from '../../components/once-a-drawing.ts'
import { say } from '../../components/say.ts'
import { walkLines } from '../../components/walk-lines.ts'
import { TrayLine, VerdictMark } from './tray-line.tsx'
import './tray-ranking.css'

/** Lines that are described at once; the rest is weighed and counted. */
const linesAtOnce = 500

interface TrayRankingProps {
  readonly values: CaliberValues
  readonly name: string
  /** How the spring that is ranked against is called. */
  readonly against: string
}

/** The tray and the lists ranked for a spring, the best first. */
export const TrayRanking = ({ values, name, against }: TrayRankingProps) => {
  const { data, error } = useSprings()
  const bookOut = useBookOut()
  const [tray, setTray] = useState<string | null>(null)
  const [atHand, setAtHand] = useState(false)
  const [wanted, setWanted] = useState<readonly SpringVerdict[]>(springVerdicts)
  const [most, setMost] = useState(linesAtOnce)
  const [open, setOpen] = useState<number | null>(null)
  const scroll = useRef<HTMLDivElement>(null)
  const all = data?.springs
  const trays = useMemo(() => traysOf(all ?? []), [all])
  const springs = useMemo(
    () =>
      all?.filter(
        (spring) => (tray === null || (spring.tray ?? '') === tray) && (!atHand || (spring.inStock ?? 0) > 0),
      ) ?? [],
    [all, tray, atHand],
  )
  const { ranked, counts } = useMemo(() => rankSprings(values, springs, most, wanted), [values, springs, most, wanted])
  const idAt = (index: number) => springs[ranked[index]?.index ?? -1]?.id
  const lines = useVirtualizer({
    count: ranked.length,
    getScrollElement: () => scroll.current,
    getItemKey: (index) => idAt(index) ?? index,
    estimateSize: () => 3 * rootPx(),
    overscan: 6,
  })
  // Another choice begins at its head.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only what is chosen moves the list
  useEffect(() => {
    // Newer browsers answer a promise, which is no clean-up.
    void scroll.current?.scrollTo(0, 0)
  }, [tray, atHand, wanted])

  const book = (index: number) => {
    const id = idAt(index)
    if (id === undefined) return
    bookOut.mutate(
      { id, count: 1, reason: name },
      {
        onSuccess: ({ left }) => say(`Booked out for ${name}; ${left} left. Ctrl Z takes it back.`),
        onError: (failed) => say(failureText(failed)),
      },
    )
  }
  const pressed = (event: KeyboardEvent<HTMLElement>) => {
    walkLines(event, [...event.currentTarget.querySelectorAll<HTMLElement>('.tray-line')])
    const row = event.target instanceof HTMLElement ? event.target.closest<HTMLElement>('[data-index]') : null
    if (row === null || event.ctrlKey || event.metaKey || event.altKey || event.key.toLowerCase() !== 'b') return
    event.preventDefault()
    book(Number(row.dataset.index))
  }

  if (error) return <p role="alert">{failureText(error)}</p>
  if (all === undefined) return <p className="quiet">Reading the tray…</p>
  if (all.length === 0)
    return (
      <p>
        The tray is empty. <Link href="/springs">Enter springs, or bring in a supplier’s list</Link>, and they are
        ranked here.
      </p>
    )
  const shown = wanted.reduce((sum, verdict) => sum + counts[verdict], 0)
  return (
    <div className="tray-ranking">
      <div className="tray-tools">
        <label>
          Tray or list{' '}
          <select
            value={tray ?? '*'}
            onChange={(event) => setTray(event.target.value === '*' ? null : event.target.value)}
          >
            <option value="*">all</option>
            {trays.map((one) => (
              <option key={one.tray} value={one.tray}>
                {one.tray || 'own tray'} ({figure(one.springs)})
              </option>
            ))}
          </select>
        </label>
        <label>
          <input type="checkbox" checked={atHand} onChange={(event) => setAtHand(event.target.checked)} /> In stock only
        </label>
        <fieldset>
          <legend className="out-of-sight">Show</legend>
          {springVerdicts.map((verdict) => (
            <label key={verdict} className="tray-chip">
              <input
                type="checkbox"
                checked={wanted.includes(verdict)}
                onChange={({ target }) =>
                  setWanted(springVerdicts.filter((one) => (one === verdict ? target.checked : wanted.includes(one))))
                }
              />
              <VerdictMark verdict={verdict} /> {figure(counts[verdict])}
            </label>
          ))}
        </fieldset>
      </div>
      {ranked.length === 0 && <p>No spring answers to this choice.</p>}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the arrow keys go along the lines, which are buttons */}
      <div ref={scroll} className="tray-scroll" onKeyDown={pressed}>
        <div className="tray-list" style={{ height: lines.getTotalSize() }}>
          {lines.getVirtualItems().map(({ key, index, start }) => {
            const found = ranked[index]
            return found === undefined ? null : (
              <div
                key={key}
                ref={lines.measureElement}
                data-index={index}
                className="tray-row"
                style={{ transform: `translateY(${start}px)` }}
              >
                <TrayLine
                  found={found}
                  values={values}
                  against={against}
                  open={open === idAt(index)}
                  onOpen={() => setOpen((now) => (now === idAt(index) ? null : (idAt(index) ?? null)))}
                  onBookOut={() => book(index)}
                />
              </div>
            )
          })}
        </div>
      </div>
      <p className="quiet tray-foot">
        {shown > ranked.length ? `The best ${figure(ranked.length)} of ${figure(shown)}. ` : ''}
        <kbd>↑</kbd> <kbd>↓</kbd> walk, <kbd>Enter</kbd> opens, <kbd>B</kbd> books one out.
      </p>
      {shown > ranked.length && (
        <button type="button" className="plain-button" onClick={() => setMost(most + linesAtOnce)}>
          Show {linesAtOnce} more
        </button>
      )}
    </div>
  )
}
