import { useQuery } from '@tanstack/react-query'
import { type KeyboardEvent, type ReactNode, useEffect, useId, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { CaliberRow } from '../../../core/api/contract.ts'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readNames } from '../../../core/record/read-field.ts'
import { wordNearName } from '../../../core/wording/near-name.ts'
import { wordSearchReason } from '../../../core/wording/search-reason.ts'
import { call, useCaliber, useChange, useSearch } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { MergePreview } from './merge-preview.tsx'
import './merge-page.css'

type Candidate = CaliberRow & { readonly reason: string }

const nameOf = ({ maker, designation }: { readonly maker: string; readonly designation: string }) =>
  `${maker} ${designation}`

/** What may be the same caliber: by its names while nothing is typed, by the search otherwise. */
const useCandidates = (id: number, entry: CaliberEntry | undefined, words: string): readonly Candidate[] => {
  const search = useSearch(words)
  const near = useQuery({
    queryKey: ['calibers.near', id, entry],
    queryFn: () => {
      const { maker = '', designation = '', fields = {} } = entry ?? {}
      const others = (fields.alsoKnownAs ?? []).flatMap(({ printed }) => readNames(printed)).slice(0, 50)
      const alsoKnownAs = others.map((name) => name.slice(0, 200))
      const names = { maker: maker.slice(0, 200), designation: designation.slice(0, 200), alsoKnownAs }
      return call('calibers.near', { ...names, except: id, limit: 10 })
    },
    enabled: entry !== undefined,
  })
  return words === ''
    ? (near.data?.near ?? []).map((row) => ({ ...row, reason: `It ${wordNearName(row.why)}.` }))
    : (search.data?.hits ?? [])
        .filter((row) => row.id !== id)
        .slice(0, 12)
        .map((row) => ({ ...row, reason: wordSearchReason(row.why) }))
}

/** Finds the other record of the same caliber, shows what merging would do, and does it. */
export const MergePage = ({ id }: { id: number }) => {
  const [, go] = useLocation()
  const list = useId()
  const input = useRef<HTMLInputElement>(null)
  const [words, setWords] = useState('')
  const [at, setAt] = useState(0)
  const [from, setFrom] = useState<number>()
  const kept = useCaliber(id)
  const merging = useChange('caliber.merge')
  const candidates = useCandidates(id, kept.data?.entry, words.trim())
  const active = Math.min(at, candidates.length - 1)
  const known = kept.data !== undefined
  useCommands([{ label: 'Back to the caliber', keys: ['Escape'], run: () => go(`/caliber/${id}`) }])
  useEffect(() => {
    if (known) input.current?.focus()
  }, [known])

  if (kept.error) {
    return (
      <p className="notice" role="alert">
        {failureText(kept.error)} <Link href="/">Back to the list</Link>
      </p>
    )
  }
  if (!kept.data) return <p className="notice quiet">Reading…</p>
  const keep = kept.data.entry

  const choose = (candidate: Candidate | undefined) => candidate && setFrom(candidate.id)
  const press = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown') setAt(Math.min(active + 1, candidates.length - 1))
    else if (event.key === 'ArrowUp') setAt(Math.max(active - 1, 0))
    else if (event.key === 'Enter') choose(candidates[active])
    else if (event.key === 'Escape') go(`/caliber/${id}`)
    else return
    event.preventDefault()
  }
  const merge = (other: CaliberEntry, otherId: number) =>
    merging.mutate(
      { keep: id, from: otherId },
      {
        onSuccess: () => {
          say(`Merged ${nameOf(other)} into ${nameOf(keep)}. Ctrl Z parts them again.`)
          go(`/caliber/${id}`)
        },
      },
    )

  return (
    <article className="merge">
      <h1>Merge another caliber into {nameOf(keep)}</h1>
      <label>
        The other record of the same caliber
        <input
          ref={input}
          type="text"
          role="combobox"
          aria-expanded={candidates.length > 0}
          aria-controls={list}
          aria-activedescendant={active >= 0 ? `${list}-${active}` : undefined}
          autoComplete="off"
          placeholder="Maker, designation or another name"
          value={words}
          onChange={(event) => {
            setWords(event.target.value)
            setAt(0)
            setFrom(undefined)
          }}
          onKeyDown={press}
        />
      </label>
      <div role="listbox" id={list} aria-label="Calibers found" className="merge-found">
        {candidates.map((candidate, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the field above moves through the list and chooses
          <div
            key={candidate.id}
            id={`${list}-${index}`}
            role="option"
            tabIndex={-1}
            aria-selected={index === active}
            data-chosen={candidate.id === from || undefined}
            className="command"
            onClick={() => choose(candidate)}
          >
            <span>{nameOf(candidate)}</span>
            <span className="quiet">{candidate.reason}</span>
          </div>
        ))}
      </div>
      {candidates.length === 0 ? (
        <p className="quiet">
          {words.trim() === '' ? 'No caliber has nearly this name. Type what the other is called.' : 'None is found.'}
        </p>
      ) : null}
      {from === undefined ? null : (
        <Preview key={from} keep={keep} from={from}>
          {(other) => (
            <p className="merge-actions">
              {merging.error ? (
                <span className="problem" role="alert">
                  {failureText(merging.error)}
                </span>
              ) : null}
              <button
                type="button"
                className="plain-button chief"
                disabled={merging.isPending}
                onClick={() => merge(other, from)}
              >
                Merge {nameOf(other)} into {nameOf(keep)}
              </button>
            </p>
          )}
        </Preview>
      )}
      <p className="quiet">
        Nothing is changed until you press Merge. It is one step, and taking it back brings both records back.{' '}
        <Link href={`/caliber/${id}`}>Back to the caliber</Link> <kbd>Esc</kbd>
      </p>
    </article>
  )
}

interface PreviewProps {
  readonly keep: CaliberEntry
  readonly from: number
  readonly children: (other: CaliberEntry) => ReactNode
}

const Preview = ({ keep, from, children }: PreviewProps) => {
  const other = useCaliber(from)
  const section = useRef<HTMLElement>(null)
  const entry = other.data?.entry
  const shown = useMemo(() => entry && <MergePreview keep={keep} from={entry} />, [keep, entry])
  useEffect(() => {
    if (entry) section.current?.querySelector('button')?.focus()
  }, [entry])
  if (other.error) return <p role="alert">{failureText(other.error)}</p>
  if (entry === undefined) return <p className="quiet">Reading…</p>
  return (
    <section ref={section} aria-label="What would be merged">
      {children(entry)}
      {shown}
    </section>
  )
}
