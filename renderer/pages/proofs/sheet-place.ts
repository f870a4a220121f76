import type { VirtualItem } from '@tanstack/react-virtual'
import type { Grouping, SheetFilter } from './sheet-rows.ts'

/** What the sheet shows at first: whatever wants a look. */
export const usualFilter: SheetFilter = {
  words: '',
  maker: '',
  proof: '',
  standings: ['wrong', 'doubtful', 'accepted'],
}

/** Where the sheet stood, so that coming back from a caliber finds it as it was left. */
export const sheetPlace: {
  by: Grouping
  filter: SheetFilter
  /** The line in hand, by its key. */
  line: string
  scrolled: number
  measured: VirtualItem[]
} = { by: 'proof', filter: usualFilter, line: '', scrolled: 0, measured: [] }
