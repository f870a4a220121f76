import type { StockSpring } from '../../../core/springs/stock-spring.ts'
import { BookOutForm } from './book-out-form.tsx'
import type { StoredSpring } from './spring-columns.ts'
import { SpringDetails } from './spring-details.tsx'
import { SpringForm } from './spring-form.tsx'

/** What is open beside the list. */
export type OpenPane =
  | { readonly what: 'details' | 'change' | 'book-out'; readonly id: number }
  | { readonly what: 'new' }

interface SpringPaneProps {
  readonly what: OpenPane['what']
  /** The spring that is open; none while a new one is entered. */
  readonly spring: StoredSpring | undefined
  /** The tray on which a new spring begins. */
  readonly tray: string
  readonly trays: readonly string[]
  readonly save: (id: number | null, spring: StockSpring) => Promise<string | null>
  readonly bookOut: (spring: StoredSpring, count: number, reason: string) => Promise<string | null>
  readonly remove: (spring: StoredSpring) => void
  readonly open: (pane: OpenPane) => void
  readonly leave: () => void
}

const withoutId = ({ id: _, ...spring }: StoredSpring): StockSpring => spring as StockSpring

/** One spring beside the list: in full, to be entered or changed, or to be booked out. */
export const SpringPane = ({ what, spring, tray, trays, save, bookOut, remove, open, leave }: SpringPaneProps) => {
  if (spring === undefined)
    return <SpringForm spring={null} tray={tray} trays={trays} save={(entered) => save(null, entered)} leave={leave} />
  const { id } = spring
  if (what === 'change')
    return (
      <SpringForm
        key={id}
        spring={withoutId(spring)}
        tray=""
        trays={trays}
        save={(changed) => save(id, changed)}
        leave={leave}
      />
    )
  if (what === 'book-out')
    return (
      <BookOutForm key={id} spring={spring} bookOut={(count, reason) => bookOut(spring, count, reason)} leave={leave} />
    )
  return (
    <SpringDetails
      spring={spring}
      edit={() => open({ what: 'change', id })}
      bookOut={() => open({ what: 'book-out', id })}
      remove={() => remove(spring)}
      close={leave}
    />
  )
}
