import { useVirtualizer } from '@tanstack/react-virtual'
import { useDeferredValue, useEffect, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { CaliberRow, SearchReason } from '../../../core/api/contract.ts'
import { wordSearchReason } from '../../../core/wording/search-reason.ts'
import { rowsPerPage, useCaliberRows, useSearch } from '../../api/hooks.ts'
import { useCommands } from '../../components/commands.ts'
import { failureText } from '../../components/failure-text.ts'
import { onceADrawing, rootPx } from '../../components/once-a-drawing.ts'
import { CaliberOption } from './caliber-option.tsx'
import { EmptyLibrary } from './empty-library.tsx'
import { listPlace } from './list-place.ts'

type Row = CaliberRow & { readonly why?: SearchReason }

/** Height of a row in rem; a hit has a line more with its reason, and a narrow page a line more with the maker. */
const rowRem = { listed: 2.6, hit: 3.8, narrow: 1.4 }
/** The width at which the style sheet goes over to narrow rows. */
const narrowRem = 40

const isNarrow = onceADrawing(() => (document.getElementById('page')?.clientWidth ?? 0) <= narrowRem * rootPx())

const pagesOf = (first: number, last: number) => {
  const from = Math.floor(first / rowsPerPage)
  return Array.from({ length: Math.floor(last / rowsPerPage) - from + 1 }, (_, index) => from + index)
}

/** All calibers of the library, and the ones that a search finds. */
export const CalibersPage = () => {
  const [, go] = useLocation()
  const input = useRef<HTMLInputElement>(null)
  const list = useRef<HTMLDivElement>(null)
  const scroller = useRef<HTMLDivElement>(null)
  const [words, setWords] = useState(listPlace.words)
  const [at, setAt] = useState(listPlace.at)
  const [pages, setPages] = useState<readonly number[]>([0])
  const wanted = useDeferredValue(words.trim())
  const search = useSearch(wanted)
  const listed = useCaliberRows(pages)
  const hits = wanted === '' ? undefined : search.data?.hits
  const searching = wanted !== ''
  const count = searching ? (hits?.length ?? 0) : (listed.total ?? 0)
  const rowAt = (index: number): Row | undefined => (searching ? hits?.[index] : listed.rows.get(index))
  const active = Math.max(0, Math.min(at, count - 1))

  const virtual = useVirtualizer({
    count,
    getScrollElement: () => scroller.current,
    estimateSize: () => ((searching ? rowRem.hit : rowRem.listed) + (isNarrow() ? rowRem.narrow : 0)) * rootPx(),
    overscan: 12,
  })
  const shown = virtual.getVirtualItems()
  const wantedPages =
    searching || shown.length === 0 ? '0' : pagesOf(shown[0]?.index ?? 0, shown.at(-1)?.index ?? 0).join()
  useEffect(() => setPages(wantedPages.split(',').map(Number)), [wantedPages])

  // biome-ignore lint/correctness/useExhaustiveDependencies: the rows change height when a search starts or ends
  useEffect(() => virtual.measure(), [searching])
  // Text size is set on the root, so rows are measured anew when it changes.
  useEffect(() => {
    const seen = new ResizeObserver(() => virtual.measure())
    if (input.current) seen.observe(input.current)
    return () => seen.disconnect()
  }, [virtual])
  useEffect(() => {
    listPlace.back = '/'
    listPlace.words = words
    listPlace.at = active
  }, [words, active])
  const ready = listed.total !== undefined && listed.total > 0
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when there is a list to stand in
  useEffect(() => {
    if (!ready) return
    if (listPlace.find) input.current?.select()
    // Who has begun to type while the list was read goes on typing.
    else if (document.activeElement !== input.current) list.current?.focus({ preventScroll: true })
    listPlace.find = false
    if (listPlace.at > 0) virtual.scrollToIndex(listPlace.at)
  }, [ready])

  const move = (to: number) => {
    const next = Math.max(0, Math.min(to, count - 1))
    setAt(next)
    virtual.scrollToIndex(next)
  }
  const open = (row: Row | undefined) => row && go(`/caliber/${row.id}`)
  const clear = () => {
    setWords('')
    setAt(0)
    input.current?.focus()
  }
  useCommands([
    {
      label: 'Find a caliber',
      keys: ['/'],
      run: () => {
        input.current?.focus()
        input.current?.select()
      },
    },
    {
      label: 'Spring of the chosen caliber',
      keys: ['Ctrl+Enter'],
      run: () => {
        const chosen = rowAt(active)
        if (chosen) go(`/caliber/${chosen.id}/spring`)
      },
    },
  ])

  const onKeyDown = (event: React.KeyboardEvent) => {
    const page = Math.max(1, Math.floor((scroller.current?.clientHeight ?? 0) / (rowRem.listed * rootPx())) - 1)
    if (event.key === 'ArrowDown') move(active + 1)
    else if (event.key === 'ArrowUp') move(active - 1)
    else if (event.key === 'PageDown') move(active + page)
    else if (event.key === 'PageUp') move(active - page)
    else if (event.ctrlKey && event.key === 'Home') move(0)
    else if (event.ctrlKey && event.key === 'End') move(count - 1)
    else if (event.key === 'Enter' && !event.ctrlKey && !event.metaKey && !event.nativeEvent.isComposing)
      open(rowAt(active))
    else if (event.key === 'Escape') clear()
    else return
    event.preventDefault()
  }

  const error = searching ? search.error : listed.error
  if (listed.total === 0) return <EmptyLibrary />
  const total = listed.total ?? 0
  const nothing = searching && search.isSuccess && !search.isPlaceholderData && count === 0
  return (
    <div className="calibers">
      <header className="calibers-head">
        <h1>Calibers</h1>
        <div className="search">
          <input
            ref={input}
            type="text"
            role="combobox"
            aria-label="Find a caliber by maker, designation, other name, size or any word"
            aria-expanded={count > 0}
            aria-controls="caliber-list"
            aria-autocomplete="list"
            aria-activedescendant={count > 0 ? `caliber-${active}` : undefined}
            placeholder="Designation, maker, size, or any word"
            autoComplete="off"
            spellCheck={false}
            value={words}
            onChange={(event) => {
              setWords(event.target.value)
              setAt(0)
              scroller.current?.scrollTo(0, 0)
            }}
            onKeyDown={onKeyDown}
          />
          {words === '' ? (
            <kbd>/</kbd>
          ) : (
            <button type="button" className="text-button" onClick={clear}>
              Clear
            </button>
          )}
        </div>
        <p className="quiet count" role="status">
          {searching
            ? hits
              ? `${count === 200 ? 'First 200' : count} of ${total} found`
              : ''
            : `${total} ${total === 1 ? 'caliber' : 'calibers'}`}
        </p>
        <Link href="/new" className="plain-button">
          Enter a new caliber <kbd>N</kbd>
        </Link>
      </header>
      {error && (
        <p className="notice" role="alert">
          {failureText(error)}
        </p>
      )}
      {nothing && (
        <div className="notice">
          <p>
            Nothing in the library answers to “{wanted}”. Designations, makers, other names, sizes and every word of the
            entries were tried, and near spellings too.
          </p>
          <p className="actions">
            <Link href="/new" className="plain-button">
              Enter a new caliber
            </Link>
            <button type="button" className="plain-button" onClick={clear}>
              Show all calibers
            </button>
          </p>
        </div>
      )}
      {!nothing && (
        <div className="caliber-columns" aria-hidden="true">
          <span>Designation</span>
          <span>Maker</span>
          <span className="figure">Size</span>
          <span className="figure">mm</span>
          <span className="figure">Beats an hour</span>
          <span>Years</span>
          <span>Proofs</span>
        </div>
      )}
      <div ref={scroller} className="caliber-scroller">
        <div
          ref={list}
          id="caliber-list"
          role="listbox"
          aria-label={searching ? 'Calibers found' : 'Calibers'}
          tabIndex={count > 0 ? 0 : -1}
          aria-activedescendant={count > 0 ? `caliber-${active}` : undefined}
          className="caliber-list"
          style={{ height: virtual.getTotalSize() }}
          onKeyDown={onKeyDown}
        >
          {shown.map((item) => (
            <CaliberOption
              key={item.key}
              row={rowAt(item.index)}
              index={item.index}
              count={count}
              active={item.index === active}
              top={item.start}
              height={item.size}
              why={searching ? rowWhy(rowAt(item.index)) : ''}
              onOpen={() => {
                setAt(item.index)
                listPlace.at = item.index
                open(rowAt(item.index))
              }}
            />
          ))}
        </div>
      </div>
    </div>
  )
}

const rowWhy = (row: Row | undefined): string => (row?.why ? wordSearchReason(row.why) : '')
