import { Link } from 'wouter'

interface SpringsHeadProps {
  /** How many there are, and how many of them are found. */
  readonly count: string
  readonly enter: () => void
  /** Absent while there is nothing to print or save. */
  readonly save: (() => void) | undefined
}

/** The head of the springs, with what can be done with them together. */
export const SpringsHead = ({ count, enter, save }: SpringsHeadProps) => (
  <header className="page-head">
    <h1>Springs</h1>
    <p className="quiet" role="status">
      {count}
    </p>
    <p className="head-actions">
      <button type="button" className="plain-button" onClick={enter}>
        Enter a spring <kbd>A</kbd>
      </button>
      <Link href="/springs/import" className="plain-button">
        Bring in a list
      </Link>
      {save && (
        <>
          <button type="button" className="plain-button" onClick={save}>
            Save as CSV
          </button>
          <button type="button" className="plain-button" onClick={() => print()}>
            Print
          </button>
        </>
      )}
      <Link href="/gauges" className="plain-button">
        Gauge tables
      </Link>
      <Link href="/orders" className="plain-button">
        Order list <kbd>L</kbd>
      </Link>
    </p>
  </header>
)
