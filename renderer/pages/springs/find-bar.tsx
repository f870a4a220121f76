import type { RefObject } from 'react'
import { figure } from '../../../core/wording/figure.ts'

interface FindBarProps {
  readonly input: RefObject<HTMLInputElement | null>
  readonly text: string
  readonly setText: (text: string) => void
  /** Goes to the first of the springs found. */
  readonly toFirst: () => void
  /** The only tray looked on; null for all of them. */
  readonly tray: string | null
  readonly setTray: (tray: string | null) => void
  readonly trays: readonly { readonly tray: string; readonly springs: number }[]
}

/** What is looked for among the springs, and on which tray. */
export const FindBar = ({ input, text, setText, toFirst, tray, setTray, trays }: FindBarProps) => (
  <div className="springs-tools">
    <div className="search">
      <input
        ref={input}
        type="text"
        aria-label="Find a spring by number, tray, note, price or sizes"
        placeholder="Number, note, or sizes: 1.50 × 0.105 × 360"
        autoComplete="off"
        spellCheck={false}
        value={text}
        onChange={({ target }) => setText(target.value)}
        onKeyDown={(event) => {
          if (event.key === 'ArrowDown') toFirst()
          else if (event.key === 'Escape' && text !== '') setText('')
          else return
          event.preventDefault()
        }}
      />
      <kbd>/</kbd>
    </div>
    <label>
      Tray or list
      <select
        value={tray === null ? 'all' : `on ${tray}`}
        onChange={({ target }) => setTray(target.value === 'all' ? null : target.value.slice(3))}
      >
        <option value="all">all</option>
        {trays.map((one) => (
          <option key={one.tray} value={`on ${one.tray}`}>
            {one.tray || 'own tray'} ({figure(one.springs)})
          </option>
        ))}
      </select>
    </label>
  </div>
)
