import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import type { StoredSpring } from './spring-columns.ts'

interface BookOutFormProps {
  readonly spring: StoredSpring
  /** Answers why it was refused, or null. */
  readonly bookOut: (count: number, reason: string) => Promise<string | null>
  readonly leave: () => void
}

/** How many of a spring leave the tray, and for what. */
export const BookOutForm = ({ spring, bookOut, leave }: BookOutFormProps) => {
  const count = useRef<HTMLInputElement>(null)
  const [typed, setTyped] = useState({ count: '1', reason: '' })
  const [problem, setProblem] = useState('')
  useEffect(() => count.current?.select(), [])
  const submit = async () => {
    const text = typed.count.trim()
    if (!/^\d{1,4}$/.test(text) || Number(text) === 0) {
      setProblem(`How many: "${text}" is not a whole number from 1 to 9999; give how many leave the tray.`)
      count.current?.focus()
      return
    }
    setProblem((await bookOut(Number(text), typed.reason.trim())) ?? '')
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return
    leave()
    event.preventDefault()
    event.stopPropagation()
  }
  return (
    <form
      className="spring-form"
      aria-label={`Book out ${spring.supplierRef}`}
      onKeyDown={onKeyDown}
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      <h2>Book out {spring.supplierRef}</h2>
      <p className="quiet">
        {spring.inStock === undefined ? 'How many there are is not known.' : `In stock: ${spring.inStock}.`}
      </p>
      <label className="spring-text">
        <span>How many</span>
        <input
          ref={count}
          type="text"
          inputMode="numeric"
          autoComplete="off"
          value={typed.count}
          onChange={({ target }) => setTyped({ ...typed, count: target.value })}
        />
      </label>
      <label className="spring-text">
        <span>For what</span>
        <input
          type="text"
          autoComplete="off"
          maxLength={200}
          placeholder="Caliber or movement"
          value={typed.reason}
          onChange={({ target }) => setTyped({ ...typed, reason: target.value })}
        />
      </label>
      {problem && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      <p className="actions">
        <button type="submit" className="plain-button chief">
          Book out
        </button>
        <button type="button" className="plain-button" onClick={leave}>
          Leave <kbd>Esc</kbd>
        </button>
      </p>
    </form>
  )
}
