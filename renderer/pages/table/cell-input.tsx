import { useRef, useState } from 'react'

interface CellInputProps {
  readonly label: string
  /** With `whole`, what stands there is changed and arrows stay in it; otherwise it is typed anew. */
  readonly first: { readonly text: string; readonly whole: boolean }
  /** The keys with which one leaves; empty where the cell lost the focus. */
  readonly onCommit: (text: string, keys: string) => void
  readonly onCancel: () => void
}

const leaving = new Set(['Enter', 'Tab', 'ArrowUp', 'ArrowDown'])

/** A cell while it is written in. */
export const CellInput = ({ label, first, onCommit, onCancel }: CellInputProps) => {
  const [text, setText] = useState(first.text)
  const done = useRef(false)
  const once = (act: () => void) => {
    if (done.current) return
    done.current = true
    act()
  }
  return (
    <input
      ref={(input) => {
        if (input && document.activeElement !== input) {
          input.focus()
          input.setSelectionRange(input.value.length, input.value.length)
        }
      }}
      className="entry-input"
      aria-label={label}
      autoComplete="off"
      spellCheck={false}
      value={text}
      onChange={({ target }) => setText(target.value)}
      onBlur={() => once(() => onCommit(text, ''))}
      onKeyDown={(event) => {
        if (event.nativeEvent.isComposing) return
        if (event.key === 'Escape') once(onCancel)
        else if (leaving.has(event.key) && !(first.whole && event.key.startsWith('Arrow')))
          once(() => onCommit(text, `${event.shiftKey ? 'Shift+' : ''}${event.key}`))
        else return
        event.preventDefault()
        event.stopPropagation()
      }}
    />
  )
}
