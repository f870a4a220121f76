import type { Dispatch } from 'react'
import { Link } from 'wouter'
import type { Source } from '../../../core/exchange/library-file.ts'
import type { TableAction, TableState } from './table-state.ts'

interface TableBarProps {
  readonly state: Pick<TableState, 'source' | 'page' | 'maker'>
  readonly sources: readonly Source[]
  readonly onSource: (key: string) => void
  readonly dispatch: Dispatch<TableAction>
  /** Enter in the last field. */
  readonly goOn: () => void
}

/** Source, page and maker, stated once for the whole table. */
export const TableBar = ({ state, sources, onSource, dispatch, goOn }: TableBarProps) => (
  <fieldset
    className="entry-bar-source table-bar"
    onKeyDown={(event) => {
      if (event.key !== 'Enter' || event.ctrlKey || event.nativeEvent.isComposing) return
      event.preventDefault()
      const parts = [...event.currentTarget.querySelectorAll<HTMLElement>('select, input')]
      const next = parts[parts.findIndex((part) => part.contains(document.activeElement)) + 1]
      if (next) next.focus()
      else goOn()
    }}
  >
    <legend className="out-of-sight">Source, page and maker of the whole table</legend>
    <label className="entry-bar-part" data-part="source">
      <span>Source</span>
      <select
        id="table-source"
        className="entry-input"
        value={state.source}
        onChange={({ target }) => onSource(target.value)}
      >
        <option value="">none</option>
        {sources.map(({ key, title, author, year }) => (
          <option key={key} value={key}>
            {`${key}: ${[title || key, author, year].filter((part) => part !== undefined && part !== '').join(', ')}`}
          </option>
        ))}
      </select>
    </label>
    <label className="entry-bar-part" data-part="page">
      <span>Page</span>
      <input
        className="entry-input"
        autoComplete="off"
        value={state.page}
        onChange={({ target }) => dispatch({ type: 'origin', change: { page: target.value } })}
      />
    </label>
    <label className="entry-bar-part" data-part="maker">
      <span>Maker</span>
      <input
        className="entry-input table-maker"
        autoComplete="off"
        value={state.maker}
        onChange={({ target }) => dispatch({ type: 'origin', change: { maker: target.value } })}
      />
    </label>
    {sources.length === 0 && (
      <Link href="/sources" className="entry-bar-note">
        Put a source on the shelf
      </Link>
    )}
  </fieldset>
)
