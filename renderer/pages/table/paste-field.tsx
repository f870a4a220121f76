import { useState } from 'react'

/** Where a table copied elsewhere is put in: pasted at once, or typed and then read. */
export const PasteField = ({ take }: { take: (text: string) => void }) => {
  const [text, setText] = useState('')
  const read = () => {
    setText('')
    take(text)
  }
  return (
    <div className="paste-field">
      <label>
        <span>Paste a table here, headings first: cells apart by tabs, semicolons or commas</span>
        <textarea
          className="entry-input"
          rows={2}
          spellCheck={false}
          value={text}
          onChange={({ target }) => setText(target.value)}
          onPaste={(event) => {
            if (text !== '') return
            event.preventDefault()
            take(event.clipboardData.getData('text/plain'))
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || !event.ctrlKey || text.trim() === '') return
            event.preventDefault()
            event.stopPropagation()
            read()
          }}
        />
      </label>
      {text.trim() !== '' && (
        <button type="button" className="plain-button" onClick={read}>
          Read it into the table <kbd>Ctrl Enter</kbd>
        </button>
      )}
    </div>
  )
}
