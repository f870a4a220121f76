import { useEffect, useRef } from 'react'
import { Link } from 'wouter'
import type { Refusal } from './table-reading.ts'

/** What became of a table. */
export interface Stored {
  readonly count: number
  /** What was refused, with the caliber that went in without it; null where the whole row stayed out. */
  readonly refusals: readonly (Refusal & { readonly caliberId: number | null })[]
}

interface TableStoredProps {
  readonly stored: Stored
  readonly onAnother: () => void
}

/** After the last step: how many went in, and what is still to be filled in by hand. */
export const TableStored = ({ stored: { count, refusals }, onAnother }: TableStoredProps) => {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <article className="import table-stored">
      <h1 ref={heading} tabIndex={-1}>
        {count === 1 ? '1 caliber is stored' : `${count} calibers are stored`}
      </h1>
      <p>
        <kbd>Ctrl Z</kbd> takes all of it back in one step.
      </p>
      {refusals.length > 0 && (
        <>
          <h2>Refused</h2>
          <ul className="table-refusals">
            {refusals.map(({ place, designation, field, reason, caliberId }) => (
              <li key={`${place.row} ${place.column}`}>
                {caliberId === null || field === null ? (
                  `Row ${place.row + 1}`
                ) : (
                  <Link href={`/caliber/${caliberId}/edit/${field}`}>
                    Row {place.row + 1}, {designation}
                  </Link>
                )}
                : {reason}
              </li>
            ))}
          </ul>
        </>
      )}
      <p className="actions">
        <Link href="/" className="plain-button">
          Go to calibers <kbd>G</kbd>
        </Link>
        <button type="button" className="plain-button" onClick={onAnother}>
          Enter another table
        </button>
      </p>
    </article>
  )
}
