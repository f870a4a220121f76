import type { StockCounts } from '../../../core/api/contract.ts'
import { figure } from '../../../core/wording/figure.ts'

interface ForeseenChangesProps {
  readonly counts: StockCounts | null
  readonly refused: number
  /** How far the list is read, and how far the library has been asked. */
  readonly read: { readonly done: number; readonly of: number }
  readonly asked: { readonly done: number; readonly of: number }
  readonly bringingIn: boolean
  readonly bringIn: () => void
}

const Progress = ({ doing, done, of }: { readonly doing: string; readonly done: number; readonly of: number }) => (
  <p className="list-progress">
    <span>
      {doing} {figure(Math.min(done, of))} of {figure(of)}
    </span>
    <progress aria-label={doing} value={done} max={of} />
  </p>
)

/** What bringing the list in would do, and the button that does it. */
export const ForeseenChanges = ({ counts, refused, read, asked, bringingIn, bringIn }: ForeseenChangesProps) => {
  const reading = read.done < read.of
  const changes = counts === null ? 0 : counts.added + counts.updated + counts.removed
  return (
    <section className="list-foreseen" aria-label="What would be done">
      <h2>What would be done</h2>
      <div aria-live="polite">
        {reading ? (
          <Progress doing="Reading row" {...read} />
        ) : asked.of === 0 ? (
          <p>No row can be brought in yet: say which columns hold number, height and thickness.</p>
        ) : counts === null ? (
          <Progress doing="Comparing with the tray: spring" {...asked} />
        ) : (
          <p className="list-counts">
            <span>{figure(counts.added)} added</span>
            <span>{figure(counts.updated)} changed</span>
            <span>{figure(counts.unchanged)} unchanged</span>
            <span>{figure(counts.removed)} removed</span>
            <span>{figure(refused)} refused</span>
          </p>
        )}
      </div>
      {bringingIn && <progress aria-label="Bringing in the list" />}
      <p className="actions">
        <button
          type="button"
          className="plain-button chief"
          disabled={changes === 0 || bringingIn || reading}
          onClick={bringIn}
        >
          {bringingIn ? 'Bringing in…' : 'Bring in'} <kbd>Ctrl Enter</kbd>
        </button>
      </p>
      <p className="quiet">Nothing is stored until you press Bring in, and one step takes all of it back.</p>
    </section>
  )
}
