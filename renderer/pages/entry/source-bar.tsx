import { type Dispatch, type KeyboardEvent, useState } from 'react'
import type { Source } from '../../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import { sourceUnits } from '../../../core/record/source-units.ts'
import { idOfCell } from './cells.ts'
import type { EntryAction, SourceInHand } from './entry-state.ts'
import { goToCell } from './form-walk.ts'
import { sourceKey } from './source-key.ts'

const fresh = '+new'
const blank = { title: '', author: '', year: '' }
const noUnits = ''

const nameOf = ({ key, title, author, year }: Source): string =>
  `${key}: ${[title || key, author, year].filter((part) => part !== undefined && part !== '').join(', ')}`

interface SourceBarProps {
  readonly inHand: SourceInHand
  readonly sources: readonly Source[]
  readonly withoutSource: readonly CaliberFieldKey[]
  readonly dispatch: Dispatch<EntryAction>
  readonly addSource: (source: Source) => Promise<boolean>
  readonly arrange: () => void
}

/** Source and page, stated once: they ride along on every value typed from then on. */
export const SourceBar = ({ inHand, sources, withoutSource, dispatch, addSource, arrange }: SourceBarProps) => {
  const [adding, setAdding] = useState(false)
  const [typed, setTyped] = useState(blank)
  const [units, setUnits] = useState(noUnits)
  const take = (change: Partial<SourceInHand>) => dispatch({ type: 'take-in-hand', inHand: { ...inHand, ...change } })

  const add = async () => {
    const title = typed.title.trim()
    if (title === '') {
      goToCell('bar.title')
      return
    }
    const key = sourceKey(
      typed,
      sources.map((source) => source.key),
    )
    const author = typed.author.trim()
    const year = /^\d{4}$/.test(typed.year.trim()) ? Number(typed.year) : undefined
    const added = await addSource({
      key,
      title,
      ...(author ? { author } : {}),
      ...(year ? { year } : {}),
      ...(units ? { unitsAsPrinted: units } : {}),
    })
    if (!added) return
    take({ source: key })
    setAdding(false)
    setTyped(blank)
    setUnits(noUnits)
    goToCell('bar.page')
  }

  const addOnEnter = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || event.shiftKey || event.ctrlKey) return
    event.preventDefault()
    event.stopPropagation()
    void add()
  }
  const part = (name: keyof typeof blank, label: string, adds = false) => (
    <label className="entry-bar-part" data-part={name}>
      <span>{label}</span>
      <input
        id={idOfCell(`bar.${name}`)}
        data-cell={`bar.${name}`}
        className="entry-input"
        type="text"
        autoComplete="off"
        value={typed[name]}
        onChange={(event) => setTyped({ ...typed, [name]: event.target.value })}
        onKeyDown={adds ? addOnEnter : undefined}
      />
    </label>
  )

  return (
    <fieldset className="entry-bar-source">
      <legend className="out-of-sight">Source of the values typed from now on</legend>
      <label className="entry-bar-part" data-part="source">
        <span>Source</span>
        <select
          id={idOfCell('bar.source')}
          data-cell="bar.source"
          className="entry-input"
          aria-keyshortcuts="Alt+0"
          value={adding ? fresh : inHand.source}
          onChange={({ target }) => {
            setAdding(target.value === fresh)
            if (target.value !== fresh) take({ source: target.value, page: '' })
          }}
        >
          <option value="">none</option>
          <option value={fresh}>new source…</option>
          {sources.map((source) => (
            <option key={source.key} value={source.key}>
              {nameOf(source)}
            </option>
          ))}
        </select>
      </label>
      {adding ? (
        <>
          {part('title', 'Title')}
          {part('author', 'Author')}
          {part('year', 'Year', true)}
          <label className="entry-bar-part" data-part="units">
            <span>Sizes in</span>
            <select
              id={idOfCell('bar.units')}
              data-cell="bar.units"
              className="entry-input"
              value={units}
              onChange={({ target }) => setUnits(target.value)}
              onKeyDown={addOnEnter}
            >
              <option value={noUnits}>not said</option>
              {Object.entries(sourceUnits).map(([key, { label }]) => (
                <option key={key} value={key}>
                  {label}
                </option>
              ))}
            </select>
          </label>
          <button type="button" className="entry-button" onClick={() => void add()}>
            Add source
          </button>
        </>
      ) : null}
      <label className="entry-bar-part" data-part="page">
        <span>Page</span>
        <input
          id={idOfCell('bar.page')}
          data-cell="bar.page"
          className="entry-input"
          type="text"
          autoComplete="off"
          value={inHand.page}
          onChange={(event) => take({ page: event.target.value })}
        />
      </label>
      {inHand.source !== '' && !adding ? (
        <button type="button" className="entry-button is-quiet" aria-keyshortcuts="Alt+A" onClick={arrange}>
          Arrange fields <kbd>Alt A</kbd>
        </button>
      ) : null}
      {inHand.source === '' || adding ? (
        <p className="entry-bar-note">
          {adding
            ? 'Enter in Year adds it; Tab goes on to the unit of its sizes.'
            : 'Rides along on values typed from now on.'}
        </p>
      ) : withoutSource.length > 0 ? (
        <button
          type="button"
          className="entry-button is-quiet"
          onClick={() => dispatch({ type: 'give-source', keys: withoutSource })}
        >
          Give it to the {withoutSource.length === 1 ? 'value' : `${withoutSource.length} values`} without a source
        </button>
      ) : null}
    </fieldset>
  )
}
