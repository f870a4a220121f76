import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import { stockSpringLabel } from '../../../core/exchange/read-stock-spring.ts'
import type { StockSpring } from '../../../core/springs/stock-spring.ts'
import { BenchField } from '../../components/bench-field.tsx'
import { SpringChoice } from './spring-choice.tsx'
import { echoOfTyped, springOfTyped, type TypedKey, typedSpring } from './typed-spring.ts'

interface SpringFormProps {
  /** The spring to be changed; null for a new one. */
  readonly spring: StockSpring | null
  readonly tray: string
  readonly trays: readonly string[]
  /** Answers why it was refused, or null. */
  readonly save: (spring: StockSpring) => Promise<string | null>
  readonly leave: () => void
}

/** A spring to be entered or changed: sizes in any printed form, read out in millimetres under each. */
export const SpringForm = ({ spring, tray, trays, save, leave }: SpringFormProps) => {
  const id = useId()
  const form = useRef<HTMLFormElement>(null)
  const [typed, setTyped] = useState(() => ({
    ...typedSpring(spring),
    ...(spring === null ? { tray } : {}),
  }))
  const [problem, setProblem] = useState('')
  useEffect(() => form.current?.querySelector('input')?.focus(), [])

  const set = (key: TypedKey, text: string) => setTyped({ ...typed, [key]: text })
  const submit = async () => {
    const made = springOfTyped(typed, spring)
    if (!made.ok) {
      setProblem(made.problem)
      form.current?.querySelector<HTMLElement>(`[name="${made.key}"]`)?.focus()
      return
    }
    setProblem((await save(made.spring)) ?? '')
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return
    if (event.key === 'Escape') leave()
    else if (event.ctrlKey && (event.key === 's' || event.key === 'Enter')) void submit()
    else if (event.key === 'Enter' && event.target instanceof HTMLElement && event.target.matches('input, select')) {
      const fields = [...(form.current?.querySelectorAll<HTMLElement>('input, select') ?? [])]
      const next = fields[fields.indexOf(event.target) + (event.shiftKey ? -1 : 1)]
      if (next) next.focus()
      else void submit()
    } else return
    event.preventDefault()
    event.stopPropagation()
  }
  const figure = (key: TypedKey, unit: string) => (
    <BenchField
      label={stockSpringLabel(key)}
      name={key}
      unit={unit}
      figure={{ text: typed[key], ...echoOfTyped(key, typed[key]) }}
      onType={(text) => set(key, text)}
    />
  )
  const text = (key: TypedKey, list?: string) => (
    <label className="spring-text">
      <span>{stockSpringLabel(key)}</span>
      <input
        type="text"
        name={key}
        autoComplete="off"
        spellCheck={false}
        list={list}
        value={typed[key]}
        onChange={({ target }) => set(key, target.value)}
      />
    </label>
  )
  return (
    <form
      ref={form}
      className="spring-form"
      aria-label={spring === null ? 'New spring' : `Change ${spring.supplierRef}`}
      onKeyDown={onKeyDown}
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      <h2>{spring === null ? 'Enter a spring' : `Change ${spring.supplierRef}`}</h2>
      {text('supplierRef')}
      {text('tray', `${id}-trays`)}
      <datalist id={`${id}-trays`}>
        {trays.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
      {figure('heightMm', 'mm')}
      {figure('thicknessMm', 'mm')}
      {figure('lengthMm', 'mm')}
      {figure('barrelMm', 'mm')}
      <SpringChoice name="end" value={typed.end} set={(chosen) => set('end', chosen)} />
      <SpringChoice name="material" value={typed.material} set={(chosen) => set('material', chosen)} />
      {figure('inStock', '')}
      {text('price')}
      {text('note')}
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
      </p>
      <p className="quiet">As printed: 15/10, .105, 0.0041 in. A bare number is millimetres.</p>
    </form>
  )
}
