import { useState } from 'react'
import { textOfList } from './split-list.ts'

/** Where a list comes from: a file, or what is pasted. */
export const ListSource = ({ take }: { readonly take: (text: string, name: string) => void }) => {
  const [text, setText] = useState('')
  return (
    <div className="list-source">
      <label>
        A table from a spreadsheet (.csv, .txt)
        <input
          type="file"
          accept=".csv,.txt,.tsv,text/csv,text/plain"
          onChange={async ({ target }) => {
            const file = target.files?.[0]
            if (file) take(textOfList(await file.arrayBuffer()), file.name.replace(/\.\w+$/, '').slice(0, 200))
          }}
        />
      </label>
      <label>
        Or paste it here
        <textarea rows={2} spellCheck={false} value={text} onChange={({ target }) => setText(target.value)} />
      </label>
      {text.trim() !== '' && (
        <button type="button" className="plain-button" onClick={() => take(text, '')}>
          Read what is pasted
        </button>
      )}
    </div>
  )
}
