import { useEffect, useRef } from 'react'
import type { FoundProblem } from './entry-problems.ts'
import { goToCell } from './form-walk.ts'

interface RefusalNoteProps {
  /** Why the last step was refused; a new one each time, so that it is gone to again. */
  readonly refusal: { readonly text: string }
  readonly problems: readonly FoundProblem[]
}

/** Why the entry was not saved, with the way to each value that cannot be read. */
export const RefusalNote = ({ refusal, problems }: RefusalNoteProps) => {
  const note = useRef<HTMLDivElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus comes here with each refusal
  useEffect(() => note.current?.focus(), [refusal])
  return (
    <div ref={note} className="entry-refusal" id="entry-refusal" role="alert" tabIndex={-1}>
      <p>{refusal.text}</p>
      {problems.length > 0 ? (
        <ul>
          {problems.map(({ cell, text }) => (
            <li key={`${cell} ${text}`}>
              <button type="button" className="entry-link" onClick={() => goToCell(cell)}>
                {text}
              </button>
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  )
}
