import type { RefObject } from 'react'
import { proofs } from '../../../core/proofs/index.ts'
import { type Standing, standings } from '../../../core/proofs/standing.ts'
import { figure } from '../../../core/wording/figure.ts'
import { standingWord } from '../../../core/wording/standing.ts'
import type { Proved } from './prove-library.ts'
import type { Grouping, SheetFilter } from './sheet-rows.ts'
import { StandingMark, standingClass } from './standing-mark.tsx'

const groupings: readonly (readonly [Grouping, string])[] = [
  ['proof', 'proof'],
  ['caliber', 'caliber'],
  ['severity', 'severity'],
]
const offered = standings.filter((standing) => standing !== 'agrees')

const countOf = (counts: Proved['counts'], standing: Standing): number =>
  [...counts.values()].reduce((sum, ofProof) => sum + (ofProof.get(standing) ?? 0), 0)

interface SheetToolsProps {
  readonly input: RefObject<HTMLInputElement | null>
  readonly by: Grouping
  readonly setBy: (by: Grouping) => void
  readonly filter: SheetFilter
  readonly setFilter: (filter: SheetFilter) => void
  readonly makers: readonly string[]
  readonly counts: Proved['counts']
  /** From the field for words down into the lines. */
  readonly goDown: () => void
}

/** How the sheet is grouped and what of it is shown. */
export const SheetTools = ({ input, by, setBy, filter, setFilter, makers, counts, goDown }: SheetToolsProps) => {
  const show = (standing: Standing, shown: boolean) =>
    setFilter({
      ...filter,
      standings: standings.filter((one) => (one === standing ? shown : filter.standings.includes(one))),
    })
  return (
    <div className="sheet-tools">
      <div className="search">
        <input
          ref={input}
          type="text"
          aria-label="Find in the sheet by caliber, proof or any word"
          placeholder="Caliber, proof, or any word"
          autoComplete="off"
          spellCheck={false}
          value={filter.words}
          onChange={(event) => setFilter({ ...filter, words: event.target.value })}
          onKeyDown={(event) => {
            if (event.key === 'ArrowDown') goDown()
            else if (event.key === 'Escape' && filter.words !== '') setFilter({ ...filter, words: '' })
            else return
            event.preventDefault()
          }}
        />
        <kbd>/</kbd>
      </div>
      <label>
        Maker
        <select value={filter.maker} onChange={(event) => setFilter({ ...filter, maker: event.target.value })}>
          <option value="">any</option>
          {makers.map((maker) => (
            <option key={maker}>{maker}</option>
          ))}
        </select>
      </label>
      <label>
        Proof
        <select value={filter.proof} onChange={(event) => setFilter({ ...filter, proof: event.target.value })}>
          <option value="">any</option>
          {proofs.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <fieldset>
        <legend>Show</legend>
        {offered.map((standing) => (
          <label key={standing}>
            <input
              type="checkbox"
              checked={filter.standings.includes(standing)}
              onChange={(event) => show(standing, event.target.checked)}
            />
            <span className={standingClass(standing)}>
              <StandingMark standing={standing} />
              {standingWord(standing)} {figure(countOf(counts, standing))}
            </span>
          </label>
        ))}
      </fieldset>
      <fieldset>
        <legend>Group by</legend>
        {groupings.map(([grouping, word]) => (
          <label key={grouping}>
            <input type="radio" name="sheet-by" checked={by === grouping} onChange={() => setBy(grouping)} />
            {word}
          </label>
        ))}
      </fieldset>
    </div>
  )
}
