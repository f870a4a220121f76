import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react'
import type { Source } from '../../../core/exchange/library-file.ts'
import { readGaugeRows } from '../../../core/exchange/read-gauge-rows.ts'
import type { GaugeTable } from '../../../core/springs/gauge-table.ts'
import { unitName } from '../../../core/wording/unit-name.ts'
import { gaugeDraft } from './gauge-draft.ts'
import { GaugeRows } from './gauge-rows.tsx'
import { gaugeOfTyped, gaugeUnits, type TypedGauge, typedGauge } from './typed-gauge.ts'

interface GaugeFormProps {
  /** The table to be changed; null for a new one. */
  readonly table: GaugeTable | null
  readonly id: number | null
  readonly sources: readonly Source[]
  /** Answers why it was refused, or null. */
  readonly save: (table: GaugeTable) => Promise<string | null>
  readonly leave: () => void
}

/** A gauge table to be entered or changed: Enter goes on from cell to cell, a pasted table fills the rows. */
export const GaugeForm = ({ table, id, sources, save, leave }: GaugeFormProps) => {
  const form = useRef<HTMLFormElement>(null)
  const [typed, setTyped] = useState(() => gaugeDraft.read(id) ?? typedGauge(table))
  const [restored, setRestored] = useState(() => gaugeDraft.read(id) !== null)
  const [inHand, setInHand] = useState<number | null>(null)
  const [problem, setProblem] = useState('')
  const read = useMemo(() => readGaugeRows(typed.cells, typed), [typed])
  useEffect(() => form.current?.querySelector('input')?.focus(), [])

  const set = (more: Partial<TypedGauge>) => {
    setProblem('')
    const next = { ...typed, ...more }
    setTyped(next)
    gaugeDraft.write(id, next)
  }
  const goTo = (selector: string) => form.current?.querySelector<HTMLElement>(selector)?.focus()
  const submit = async () => {
    const made = gaugeOfTyped(typed, table)
    if (made.ok) {
      const refused = await save(made.table)
      setProblem(refused ?? '')
      if (refused === null) gaugeDraft.clear(id)
      return
    }
    const [first] = made.problems
    setInHand(null)
    if (made.name !== null) {
      setProblem(
        made.name === 'missing'
          ? 'Not saved: the name of the gauge is missing; fill it in as handbooks print it.'
          : 'Not saved: a name has a letter in it, so that no number is taken for it.',
      )
      goTo('[name="name"]')
    } else if (first === undefined) {
      setProblem('Not saved: the table has no row yet.')
      goTo('[data-row="0"]')
    } else {
      const count = new Set(made.problems.map(({ row }) => row)).size
      setProblem(`Not saved: ${count === 1 ? 'one row' : `${count} rows`} cannot be read. Nothing is lost.`)
      form.current?.querySelector(`[data-row="${first.row}"]`)?.scrollIntoView({ block: 'nearest' })
    }
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return
    if (event.key === 'Escape') leave()
    else if (event.ctrlKey && (event.key === 's' || event.key === 'Enter')) void submit()
    else if (event.key === 'Enter' && event.target instanceof HTMLElement && event.target.matches('input, select')) {
      const fields = [...(form.current?.querySelectorAll<HTMLElement>('input, select') ?? [])]
      fields[fields.indexOf(event.target) + (event.shiftKey ? -1 : 1)]?.focus()
    } else return
    event.preventDefault()
    event.stopPropagation()
  }
  const unknownSource = typed.source !== '' && sources.every(({ key }) => key !== typed.source)
  return (
    <form
      ref={form}
      className="gauge-form"
      aria-label={table === null ? 'New gauge table' : `Change ${table.name}`}
      onKeyDown={onKeyDown}
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      <h2>{table === null ? 'New gauge table' : `Change ${table.name}`}</h2>
      {restored && (
        <p className="actions" role="status">
          What was typed before and not saved is here again.
          <button
            type="button"
            className="text-button"
            onClick={() => {
              gaugeDraft.clear(id)
              setTyped(typedGauge(table))
              setRestored(false)
            }}
          >
            Discard it
          </button>
        </p>
      )}
      <div className="gauge-head-fields">
        <label className="gauge-wide">
          <span>Gauge, as handbooks name it</span>
          <input
            type="text"
            name="name"
            autoComplete="off"
            spellCheck={false}
            maxLength={200}
            value={typed.name}
            onChange={({ target }) => set({ name: target.value })}
          />
        </label>
        <label>
          <span>Measures</span>
          <select
            name="measures"
            value={typed.measures}
            onChange={({ target }) => set({ measures: target.value === 'height' ? 'height' : 'thickness' })}
          >
            <option value="thickness">thickness (strength)</option>
            <option value="height">height (width)</option>
          </select>
        </label>
        <label>
          <span>Of 12 × 2/0, its number is</span>
          <select
            name="place"
            value={typed.place}
            onChange={({ target: { value } }) => set({ place: value === 'first' || value === 'second' ? value : '' })}
          >
            <option value="">not settled</option>
            <option value="first">the first</option>
            <option value="second">the second</option>
          </select>
        </label>
        <label>
          <span>Source</span>
          <select name="source" value={typed.source} onChange={({ target }) => set({ source: target.value })}>
            <option value="">none</option>
            {unknownSource && <option value={typed.source}>{typed.source}</option>}
            {sources.map(({ key, title }) => (
              <option key={key} value={key}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>Page</span>
          <input
            type="text"
            name="page"
            autoComplete="off"
            maxLength={40}
            value={typed.page}
            onChange={({ target }) => set({ page: target.value })}
          />
        </label>
        <label>
          <span>A bare size is in</span>
          <select
            name="unit"
            value={typed.unit}
            onChange={({ target }) => set({ unit: gaugeUnits.find((unit) => unit === target.value) ?? 'mm' })}
          >
            {gaugeUnits.map((unit) => (
              <option key={unit} value={unit}>
                {unitName(unit)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <p className="quiet gauge-hint">
        Number, then size: 2/0, 0.27. A size is read as printed: 0,12, 12/100, 0.0047". A table of two columns can be
        pasted into any cell, apart by tabs, semicolons or commas.
      </p>
      <GaugeRows
        cells={typed.cells}
        measures={typed.measures}
        unit={typed.unit}
        problems={read.problems}
        inHand={inHand}
        take={setInHand}
        change={(cells) => set({ cells })}
      />
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      <p className="actions">
        <button type="submit" className="plain-button chief">
          Save <kbd>Ctrl S</kbd>
        </button>
        <button type="button" className="plain-button" onClick={leave}>
          Leave <kbd>Esc</kbd>
        </button>
        <span className="quiet">
          {read.rows.length} {read.rows.length === 1 ? 'row' : 'rows'} read
        </span>
      </p>
    </form>
  )
}
