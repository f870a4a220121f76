import { type Dispatch, memo } from 'react'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { type ListColumn, type ListKey, listFields } from '../../../core/fields/list-fields.ts'
import { cellOfList, idOfCell } from './cells.ts'
import type { EntryAction } from './entry-state.ts'
import { choiceOptions } from './field-input.tsx'

const textOf = (value: unknown): string =>
  Array.isArray(value) ? value.join(', ') : value === undefined || value === null ? '' : String(value)

interface ListEditorProps {
  readonly list: ListKey
  readonly lines: CaliberEntry[ListKey]
  readonly markOutcome: 'disagrees' | 'doubtful' | undefined
  readonly markText: string | undefined
  /** What cannot be read: the line it is in, and the sentence. */
  readonly problems: readonly { readonly line: number; readonly text: string }[]
  readonly dispatch: Dispatch<EntryAction>
}

/** A list of the caliber, line by line; the blank line at its end becomes one of them when something is typed in it. */
export const ListEditor = memo(function ListEditor(props: ListEditorProps) {
  const { list, lines, markOutcome, markText, problems, dispatch } = props
  const { label, line: lineName, meaning } = listFields[list]
  const columns = Object.entries<ListColumn>(listFields[list].columns)
  const title = `list-${list}`
  const notes = [markText && `${title}-proof`].filter(Boolean).join(' ') || undefined

  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a grid with its legend in it.
    <div className="entry-list" role="group" aria-labelledby={title} data-list={list} data-mark={markOutcome}>
      <h3 id={title}>{label}</h3>
      {meaning ? <p className="entry-list-meaning">{meaning}</p> : null}
      <div className="entry-list-head" aria-hidden="true">
        {columns.map(([key, column]) => (
          <span key={key}>{column.label}</span>
        ))}
        <span />
      </div>
      {[...lines, {}].map((line: Readonly<Record<string, unknown>>, at) => {
        const problem = problems.filter((found) => found.line === at).map(({ text }) => text)
        const describedBy = [problem.length > 0 ? `${title}-${at}-problem` : '', notes ?? ''].join(' ').trim()
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its place; it has no other name.
          <div className="entry-line" data-line={at} key={at}>
            {columns.map(([key, column]) => {
              const shown = textOf(line[key])
              const cell = cellOfList(list, at, key)
              const type = (text: string) => dispatch({ type: 'type-in-list', list, line: at, column: key, text })
              const common = {
                id: idOfCell(cell),
                'data-cell': cell,
                'aria-label': `${column.label}, ${lineName} ${at + 1}`,
                'aria-describedby': describedBy || undefined,
                'aria-invalid': problem.length > 0 || undefined,
                onBlur: () => dispatch({ type: 'leave-cell' }),
              } as const
              return (
                <span className="entry-line-cell" data-label={column.label} key={key}>
                  {column.kind === 'choice' ? (
                    <select
                      {...common}
                      className="entry-input"
                      value={shown}
                      onChange={(event) => type(event.target.value)}
                    >
                      {choiceOptions(column.choices ?? {}, shown)}
                    </select>
                  ) : (
                    <input
                      {...common}
                      className="entry-input"
                      type="text"
                      autoComplete="off"
                      spellCheck={false}
                      value={shown}
                      onChange={(event) => type(event.target.value)}
                    />
                  )}
                </span>
              )
            })}
            {at < lines.length ? (
              <button
                type="button"
                className="entry-remove"
                aria-label={`Remove ${lineName} ${at + 1}`}
                onClick={() => dispatch({ type: 'remove-line', list, line: at })}
              >
                ×
              </button>
            ) : (
              <span />
            )}
            {problem.length > 0 ? (
              <p className="entry-problem" id={`${title}-${at}-problem`}>
                {problem.join(' ')}
              </p>
            ) : null}
          </div>
        )
      })}
      {markText ? (
        <p className={`entry-proof-note is-${markOutcome}`} id={`${title}-proof`}>
          <span aria-hidden="true">{markOutcome === 'disagrees' ? '✕ ' : '△ '}</span>
          {markText}
        </p>
      ) : null}
    </div>
  )
})
