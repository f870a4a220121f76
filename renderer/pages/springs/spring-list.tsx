import { useVirtualizer } from '@tanstack/react-virtual'
import { type KeyboardEvent, useEffect, useLayoutEffect, useRef, useState } from 'react'
import type { SpringSorting } from '../../../core/springs/find-springs.ts'
import { rootPx } from '../../components/once-a-drawing.ts'
import { walkLines } from '../../components/walk-lines.ts'
import { type StoredSpring, springColumns, springText } from './spring-columns.ts'

interface SpringListProps {
  readonly springs: readonly StoredSpring[]
  readonly by: SpringSorting | null
  readonly down: boolean
  readonly sort: (by: SpringSorting) => void
  /** The spring in hand. */
  readonly at: number | null
  readonly take: (id: number) => void
  readonly open: (id: number) => void
  /** Counts up where the line in hand is to have the focus. */
  readonly focusAsked: number
}

/** The springs as a table with a line each; on the page are those in sight. */
export const SpringList = ({ springs, by, down, sort, at, take, open, focusAsked }: SpringListProps) => {
  const list = useRef<HTMLDivElement>(null)
  const [above, setAbove] = useState(0)
  const virtual = useVirtualizer({
    count: springs.length,
    getScrollElement: () => document.getElementById('main'),
    getItemKey: (index) => springs[index]?.id ?? index,
    estimateSize: () => 2.2 * rootPx(),
    overscan: 12,
    scrollMargin: above,
  })
  // What stands above the list changes its height with the text size, the width and what is open there.
  useLayoutEffect(() => {
    const page = list.current?.closest('.springs')
    if (!page) return
    const main = document.getElementById('main')
    const place = () =>
      setAbove(
        (list.current?.getBoundingClientRect().top ?? 0) -
          (main?.getBoundingClientRect().top ?? 0) +
          (main?.scrollTop ?? 0),
      )
    const seen = new ResizeObserver(place)
    for (const part of page.querySelectorAll('.page-head, .springs-tools, .spring-heads, .spring-pane'))
      seen.observe(part)
    place()
    return () => seen.disconnect()
  })
  const lines = () => [...(list.current?.querySelectorAll<HTMLElement>('.spring-row') ?? [])]
  const inHand = springs.findIndex(({ id }) => id === at)
  const reached = Math.max(0, inHand)
  const answered = useRef(focusAsked)
  useEffect(() => {
    if (answered.current === focusAsked) return
    const line = lines().find(({ dataset }) => Number(dataset.index) === reached)
    if (line) {
      answered.current = focusAsked
      line.focus({ preventScroll: true })
      line.scrollIntoView({ block: 'nearest' })
    } else virtual.scrollToIndex(reached, { align: 'center' })
  })
  const onKeyDown = (event: KeyboardEvent) => {
    const line = document.activeElement as HTMLElement | null
    if (event.key === 'Enter' && line?.dataset.spring !== undefined) {
      open(Number(line.dataset.spring))
      event.preventDefault()
    } else walkLines(event, lines())
  }
  const shown = virtual.getVirtualItems()
  // One line can always be reached with Tab, also where the one in hand is out of sight.
  const tabbed = shown.some(({ index }) => index === reached) ? reached : shown[0]?.index
  return (
    // biome-ignore lint/a11y/useSemanticElements: a table with a line in place for each in sight; the browser's own cannot do that
    <div className="spring-table" role="grid" aria-label="Springs" aria-rowcount={springs.length + 1} tabIndex={-1}>
      {/* biome-ignore lint/a11y/useSemanticElements: as the table */}
      <div role="rowgroup" className="spring-heads">
        {/* biome-ignore lint/a11y/useFocusableInteractive: the buttons in the headings have the focus */}
        {/* biome-ignore lint/a11y/useSemanticElements: as the table */}
        <div role="row" aria-rowindex={1} className="spring-head-row">
          {springColumns.map(({ key, label, unit }) => (
            // biome-ignore lint/a11y/useSemanticElements: as the table
            // biome-ignore lint/a11y/useFocusableInteractive: the button in it has the focus
            <div
              key={key}
              role="columnheader"
              data-part={key}
              aria-sort={by !== key ? 'none' : down ? 'descending' : 'ascending'}
            >
              <button type="button" className="text-button" onClick={() => sort(key)}>
                {label}
                {unit && <span className="unit">{unit}</span>}
                {by === key && <span aria-hidden="true">{down ? '↓' : '↑'}</span>}
              </button>
            </div>
          ))}
        </div>
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: as the table */}
      <div
        ref={list}
        role="rowgroup"
        className="spring-rows"
        style={{ height: virtual.getTotalSize() }}
        onKeyDown={onKeyDown}
      >
        {shown.map(({ key, index, start }) => {
          const spring = springs[index]
          return spring === undefined ? null : (
            // biome-ignore lint/a11y/useSemanticElements: as the table
            // biome-ignore lint/a11y/useKeyWithClickEvents: Enter is heard by the rows together
            <div
              key={key}
              ref={virtual.measureElement}
              role="row"
              aria-rowindex={index + 2}
              aria-selected={spring.id === at}
              tabIndex={index === tabbed ? 0 : -1}
              data-index={index}
              data-spring={spring.id}
              className="spring-row"
              style={{ transform: `translateY(${start - above}px)` }}
              onFocus={() => take(spring.id)}
              onClick={() => open(spring.id)}
            >
              {springColumns.map((column) => {
                const text = springText(spring, column.key)
                return (
                  // biome-ignore lint/a11y/useSemanticElements: as the table
                  // biome-ignore lint/a11y/useFocusableInteractive: the line has the focus
                  <div key={column.key} role="gridcell" data-part={column.key} data-none={text === '' || undefined}>
                    {text === '' ? '–' : text}
                  </div>
                )
              })}
            </div>
          )
        })}
      </div>
    </div>
  )
}
