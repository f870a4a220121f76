import { type Dispatch, type KeyboardEvent, useEffect, useId, useReducer, useRef } from 'react'
import { labelOf } from '../../../core/record/label-of.ts'
import { type ArrangeAction, type Arrangement, arrange, openArrangement, type Placed, rowsOf } from './arrangement.ts'

const actionOf = ({ key, altKey }: KeyboardEvent): ArrangeAction | undefined => {
  const by = key === 'ArrowDown' ? 1 : key === 'ArrowUp' ? -1 : undefined
  if (by) return altKey ? { type: 'move', by } : { type: 'go', by }
  if (key === ' ') return { type: 'pick' }
  return /^[\p{L}\p{N}'’-]$/u.test(key) && !altKey ? { type: 'letter', letter: key } : undefined
}

interface FieldListProps {
  readonly state: Arrangement
  readonly dispatch: Dispatch<ArrangeAction>
  readonly onEnter: () => void
}

/** Picked fields first, numbered in their order, and the others below. */
const FieldList = ({ state: { picked, at, letters }, dispatch, onEnter }: FieldListProps) => {
  const list = useRef<HTMLDivElement>(null)
  const id = useId()
  useEffect(() => list.current?.focus(), [])
  useEffect(() => {
    // The rows move when one is picked, so the one stood on is looked for after each change.
    if (picked && at) list.current?.querySelector('[data-at]')?.scrollIntoView({ block: 'nearest' })
  }, [picked, at])
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.nativeEvent.isComposing) return
    if (event.key === 'Enter') onEnter()
    else {
      const action = actionOf(event)
      if (!action) return
      dispatch(action)
    }
    event.preventDefault()
  }
  const row = (key: Placed, index: number) => (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the list takes the keys and moves through its rows
    <div
      key={key}
      id={`${id}-${key}`}
      role="option"
      tabIndex={-1}
      aria-selected={picked.includes(key)}
      data-at={key === at || undefined}
      className="arrange-row"
      onClick={() => {
        dispatch({ type: 'go-to', key })
        dispatch({ type: 'pick' })
        list.current?.focus()
      }}
    >
      <span className="arrange-place">{index < picked.length ? index + 1 : ''}</span>
      {labelOf(key)}
      {key === at && letters !== '' ? <span className="quiet"> {letters}…</span> : null}
    </div>
  )
  return (
    <div
      ref={list}
      className="arrange-list"
      role="listbox"
      aria-multiselectable="true"
      aria-label="Fields in the order of the book, then the others"
      aria-activedescendant={`${id}-${at}`}
      tabIndex={0}
      onKeyDown={press}
    >
      {rowsOf(picked).map(row)}
    </div>
  )
}

interface ArrangeFieldsProps {
  readonly title: string
  readonly columns: readonly string[]
  readonly onSave: (columns: readonly Placed[]) => void
  readonly onClose: () => void
}

/** Picks the fields that a source prints and puts them in its order. */
export const ArrangeFields = ({ title, columns, onSave, onClose }: ArrangeFieldsProps) => {
  const dialog = useRef<HTMLDialogElement>(null)
  const heading = useId()
  const [state, dispatch] = useReducer(arrange, columns, openArrangement)
  useEffect(() => dialog.current?.showModal(), [])
  const save = () => {
    onSave(state.picked)
    dialog.current?.close()
  }
  const move = (by: 1 | -1, label: string) => (
    <button
      type="button"
      className="entry-button"
      disabled={!state.picked.includes(state.at)}
      onClick={() => dispatch({ type: 'move', by })}
    >
      {label}
    </button>
  )
  return (
    <dialog ref={dialog} className="floating arrange" aria-labelledby={heading} onClose={onClose}>
      <h2 id={heading}>Fields that {title} prints</h2>
      <p className="entry-keys">
        <kbd>Space</kbd> picks or leaves out, <kbd>Alt ↑</kbd> <kbd>Alt ↓</kbd> move, the first letters of a heading in
        any of the four languages go to it, <kbd>Enter</kbd> keeps the order, <kbd>Esc</kbd> leaves it as it was.
      </p>
      <FieldList state={state} dispatch={dispatch} onEnter={save} />
      <p className="arrange-actions">
        {move(-1, 'Move up')}
        {move(1, 'Move down')}
        <button type="button" className="entry-button" onClick={() => dispatch({ type: 'clear' })}>
          Leave all out
        </button>
        <button type="button" className="entry-button is-first" onClick={save}>
          Keep this order
        </button>
      </p>
    </dialog>
  )
}
