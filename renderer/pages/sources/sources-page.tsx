import { type KeyboardEvent, useEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import type { CallOutput } from '../../../core/api/contract.ts'
import type { Source } from '../../../core/exchange/library-file.ts'
import { wordSourceUnits } from '../../../core/record/source-units.ts'
import { useChange, useSources } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { languageName } from '../../components/language-names.ts'
import { say } from '../../components/say.ts'
import { useTitle } from '../../components/use-title.ts'
import { walkLines } from '../../components/walk-lines.ts'
import { SourceForm } from './source-form.tsx'
import { SourceUses } from './source-uses.tsx'
import './sources-page.css'

type Shelved = CallOutput<'sources.list'>['sources'][number]

const valuesText = (values: number): string =>
  values === 0 ? 'nothing rests on it' : values === 1 ? '1 value rests on it' : `${values} values rest on it`

const describe = ({ author, year, edition, language, unitsAsPrinted }: Source): string =>
  [
    author,
    year,
    edition && (/^\d+\p{L}{0,3}\.?$/u.test(edition) ? `${edition} edition` : edition),
    language && languageName(language),
    unitsAsPrinted && `printed in ${wordSourceUnits(unitsAsPrinted)}`,
  ]
    .filter((part) => part !== undefined && part !== '')
    .join(', ')

/** The shelf: handbooks, sheets and own measurements, with what rests on each. */
export const SourcesPage = () => {
  const [, go] = useLocation()
  const sources = useSources()
  const saving = useChange('source.save')
  const removing = useChange('source.remove')
  const list = useRef<HTMLUListElement>(null)
  const [editing, setEditing] = useState<string | null>(null)
  const [shown, setShown] = useState<string | null>(null)
  const [refusal, setRefusal] = useState<{ readonly key: string; readonly text: string } | null>(null)
  const focusNext = useRef<string | null>(null)
  const shelf = sources.data?.sources ?? []
  const taken = shelf.map(({ key }) => key)

  const titles = () => [...(list.current?.querySelectorAll<HTMLElement>('.source-title') ?? [])]
  useTitle('Sources')
  const arrived = useRef(false)
  // biome-ignore lint/correctness/useExhaustiveDependencies: once the shelf shows what was asked for, the focus goes there
  useEffect(() => {
    const wanted = focusNext.current
    const title = wanted === null ? titles()[0] : titles().find((each) => each.dataset.key === wanted)
    if (title === undefined || editing !== null || (arrived.current && wanted === null)) return
    arrived.current = true
    focusNext.current = null
    title.focus()
  }, [sources.data, editing])

  const leaveForm = () => {
    focusNext.current = editing === '' ? (taken[0] ?? null) : editing
    setEditing(null)
  }
  const save = async (source: Source): Promise<string | null> => {
    try {
      focusNext.current = source.key
      await saving.mutateAsync({ source })
      say(`Saved ${source.title}.`)
      setEditing(null)
      return null
    } catch (error) {
      return failureText(error)
    }
  }
  const remove = ({ key, title }: Shelved) => {
    const at = taken.indexOf(key)
    removing.mutate(
      { key },
      {
        onSuccess: () => {
          focusNext.current = taken[at + 1] ?? taken[at - 1] ?? null
          setRefusal(null)
          say(`Removed ${title}. Ctrl Z brings it back.`)
        },
        onError: (error) => {
          setShown(key)
          setRefusal({ key, text: failureText(error) })
        },
      },
    )
  }
  const inHand = () => shelf.find(({ key }) => key === (document.activeElement as HTMLElement | null)?.dataset.key)
  const add = () => {
    setEditing('')
    setRefusal(null)
  }
  useCommands([
    { label: 'Add a source', keys: ['A'], run: add },
    {
      label: 'Remove this source',
      keys: ['Delete'],
      run: () => {
        const source = inHand()
        if (source) remove(source)
        else say('Go to a source first.')
      },
    },
    { label: 'Back to the list', keys: ['Escape'], run: () => go('/') },
  ])
  const walk = (event: KeyboardEvent) => walkLines(event, titles())

  return (
    <article className="sources">
      <header className="page-head">
        <h1>Sources</h1>
        <p className="quiet">Handbooks, sheets and own measurements that the values come from.</p>
        <p className="head-actions">
          <button type="button" className="plain-button" onClick={add}>
            Add a source <kbd>A</kbd>
          </button>
        </p>
      </header>
      {sources.error && (
        <p className="notice" role="alert">
          {failureText(sources.error)}
        </p>
      )}
      {editing === '' && <SourceForm source={null} taken={taken} save={save} leave={leaveForm} />}
      {sources.data && shelf.length === 0 && editing !== '' && (
        <p className="notice">
          The shelf is empty. Add the handbook you enter from, and each value can say where it stands.
        </p>
      )}
      {shelf.length > 0 && (
        <ul ref={list} className="shelf" aria-label="The shelf" onKeyDown={walk}>
          {shelf.map((source) => (
            <li key={source.key} className="source">
              {editing === source.key ? (
                <SourceForm source={withoutCount(source)} taken={taken} save={save} leave={leaveForm} />
              ) : (
                <>
                  <h2>
                    <button
                      type="button"
                      className="source-title"
                      data-key={source.key}
                      onClick={() => setEditing(source.key)}
                    >
                      {source.title}
                    </button>
                  </h2>
                  <p className="source-key quiet">{source.key}</p>
                  <p>{describe(source)}</p>
                  {source.notes && <p className="quiet source-notes">{source.notes}</p>}
                  <p className="source-foot">
                    {source.values === 0 ? (
                      <span className="quiet">{valuesText(0)}</span>
                    ) : (
                      <button
                        type="button"
                        className="text-button"
                        aria-expanded={shown === source.key}
                        onClick={() => setShown(shown === source.key ? null : source.key)}
                      >
                        {valuesText(source.values)}
                      </button>
                    )}
                    <button
                      type="button"
                      className="text-button"
                      aria-label={`Remove ${source.title}`}
                      onClick={() => remove(source)}
                    >
                      Remove
                    </button>
                  </p>
                  {refusal?.key === source.key && (
                    <p className="problem" role="alert">
                      {refusal.text}
                    </p>
                  )}
                  {shown === source.key && source.values > 0 && <SourceUses sourceKey={source.key} />}
                </>
              )}
            </li>
          ))}
        </ul>
      )}
      {shelf.length > 0 && (
        <p className="quiet sources-foot">
          <kbd>↓</kbd> <kbd>↑</kbd> go along the shelf, <kbd>Enter</kbd> changes a source, <kbd>Delete</kbd> removes it
          where nothing rests on it.
        </p>
      )}
    </article>
  )
}

const withoutCount = ({ values: _, ...source }: Shelved): Source => source as Source
