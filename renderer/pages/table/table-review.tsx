import { useEffect, useRef } from 'react'
import type { Decision, Duplicate } from './table-plan.ts'
import type { Refusal } from './table-reading.ts'
import type { Place } from './table-state.ts'

/** More refusals than this are not listed one by one. */
const mostListed = 200

const choices = {
  skip: 'Skip it: the library stays as it is',
  update: 'Update what is there: these values are chosen, the others stay beside them',
  both: 'Keep both, this one as',
} as const

const plural = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`

interface TableReviewProps {
  readonly refusals: readonly Refusal[]
  readonly duplicates: readonly Duplicate[]
  readonly decisions: ReadonlyMap<number, Decision>
  readonly decide: (rows: readonly number[], change: Partial<Decision>) => void
  /** How many calibers would be stored. */
  readonly count: number
  readonly storing: boolean
  readonly problem: string
  readonly goTo: (place: Place) => void
  readonly store: () => void
  readonly close: () => void
}

/** The last step: what is refused and why, what stands already, and then the storing of all in one. */
export const TableReview = (props: TableReviewProps) => {
  const { refusals, duplicates, decisions, decide, count, storing, problem, goTo, store, close } = props
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    heading.current?.focus()
    heading.current?.closest('section')?.scrollIntoView({ block: 'nearest' })
  }, [])
  return (
    <section className="table-review" aria-labelledby="table-review">
      <h2 ref={heading} id="table-review" tabIndex={-1}>
        Before it is stored
      </h2>
      {refusals.length > 0 && (
        <>
          <p>{plural(refusals.length, 'place is refused', 'places are refused')}; the rest goes in without.</p>
          <ol className="table-refusals">
            {refusals.slice(0, mostListed).map(({ place, designation, reason }) => (
              <li key={`${place.row} ${place.column}`}>
                <button type="button" className="entry-link" onClick={() => goTo(place)}>
                  Row {place.row + 1}
                  {designation && `, ${designation}`}
                </button>
                : {reason}
              </li>
            ))}
          </ol>
          {refusals.length > mostListed && (
            <p>And {refusals.length - mostListed} more; F8 in the table goes from one to the next.</p>
          )}
        </>
      )}
      {duplicates.length > 0 && (
        <>
          <p>
            {plural(duplicates.length, 'row has a name', 'rows have names')} that the library, or a row further up, has
            already.
          </p>
          {duplicates.length > 1 && (
            <p className="actions">
              {(['skip', 'update'] as const).map((choice) => (
                <button
                  key={choice}
                  type="button"
                  className="plain-button"
                  onClick={() =>
                    decide(
                      duplicates.map(({ row }) => row),
                      { choice },
                    )
                  }
                >
                  {choice === 'skip' ? 'Skip all of them' : 'Update all of them'}
                </button>
              ))}
            </p>
          )}
          {duplicates.map(({ row, entry, standing }) => {
            const { choice, designation } = decisions.get(row) ?? { choice: 'skip', designation: '' }
            return (
              <fieldset key={row} className="table-duplicate">
                <legend>
                  Row {row + 1}: {entry.maker} {entry.designation}{' '}
                  {standing === null ? 'stands further up in the table' : 'is in the library'}
                </legend>
                {(['skip', 'update', 'both'] as const).map((one) => (
                  <label key={one}>
                    <input
                      type="radio"
                      name={`table-duplicate-${row}`}
                      checked={choice === one}
                      onChange={() => decide([row], { choice: one })}
                    />
                    {choices[one]}
                  </label>
                ))}
                {choice === 'both' && (
                  <input
                    className="entry-input"
                    aria-label={`Designation under which row ${row + 1} is kept beside the other`}
                    autoComplete="off"
                    value={designation}
                    onChange={({ target }) => decide([row], { designation: target.value })}
                  />
                )}
              </fieldset>
            )
          })}
        </>
      )}
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      <p className="actions">
        <button type="button" className="plain-button chief" disabled={count === 0 || storing} onClick={store}>
          {storing ? `Storing ${plural(count, 'caliber')}…` : `Store ${plural(count, 'caliber')}`}
        </button>
        <button type="button" className="plain-button" onClick={close}>
          Back to the table
        </button>
      </p>
      <p className="quiet">Nothing is stored until then, and one step takes all of it back.</p>
    </section>
  )
}
