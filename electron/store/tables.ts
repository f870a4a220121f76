import type { Generated } from 'kysely'
import type { Outcome } from '../../core/proofs/proof.ts'
import type { OverruleSeverity } from '../../core/proofs/severity.ts'
import type { AttachmentType } from '../../core/record/attachment-kind.ts'
import type { StockSpring } from '../../core/springs/stock-spring.ts'

/** The tables as the newest migration leaves them. Booleans are 0 or 1; `extra`, `line`, `entry`, `before` and `after` are JSON. */
export interface CaliberTable {
  id: Generated<number>
  maker: string
  designation: string
  maker_folded: string
  designation_folded: string
  designation_compact: string
  designation_order: string
  size_printed: string | null
  diameter_mm: number | null
  beat_rate_vph: number | null
  first_year: number | null
  last_year: number | null
  disagree: number
  doubtful: number
  extra: string
  created_at: string
  changed_at: string
}

export interface ReadingTable {
  caliber_id: number
  /** Running number over all readings of the caliber, so that fields and readings keep their order. */
  position: number
  field: string
  printed: string
  number: number | null
  word: string | null
  low: number | null
  high: number | null
  source: string | null
  page: string | null
  note: string | null
  /** The reading that counts; the mark as it was typed is in `extra`. */
  chosen: number
  extra: string | null
}

interface LineTable {
  caliber_id: number
  position: number
  source: string | null
  /** The line as it was entered, whole. */
  line: string
}

export interface Tables {
  caliber: CaliberTable
  reading: ReadingTable
  jewel: LineTable & { place: string | null; kind: string | null; count: number | null }
  lubrication: LineTable & {
    place: string | null
    lubricant: string | null
    amount: string | null
    note: string | null
  }
  depth: LineTable & {
    driver: string | null
    driven: string | null
    driver_pitch_mm: number | null
    driven_pitch_mm: number | null
    centre_distance_mm: number | null
  }
  part: LineTable & { part: string | null; number: string | null; note: string | null }
  strip_step: LineTable & { part: string | null; after: string | null; caution: string | null }
  overrule: {
    caliber_id: number
    position: number
    proof: string
    severity: OverruleSeverity
    reason: string
    /** The outcome for which it was given. */
    outcome: Outcome
    extra: string
  }
  source: {
    key: string
    title: string
    author: string | null
    year: number | null
    edition: string | null
    language: string | null
    units_as_printed: string | null
    notes: string | null
    extra: string
  }
  draft: { caliber_id: number; entry: string; kept_at: string }
  revision: { id: Generated<number>; at: string; action: string; taken_back: number; left_behind: number }
  revision_change: {
    revision_id: number
    position: number
    /** What was changed: a caliber or a source, one of the two. */
    caliber_id: number | null
    source_key: string | null
    before: string | null
    after: string | null
  }
  kept_section: { name: string; content: string }
  note: { name: string; content: string }
  alias: { caliber_id: number; compact: string; alias: string }
  search_text: { caliber_id: number; text: string; words: string }
  search_words: { rowid: number; words: string; search_words: string }
  spelling: { deleted: string; word: string }
  attachment: {
    sha256: string
    type: AttachmentType
    name: string
    size: number
    added_at: string
    extra: string
    bytes: Buffer
  }
  attachment_use: {
    id: Generated<number>
    sha256: string
    caliber_id: number | null
    source: string | null
    page: string | null
    position: number
    note: string | null
    extra: string
  }
  attachment_change: {
    revision_id: number
    position: number
    use_id: number
    sha256: string
    before: string | null
    after: string | null
  }
  spring: {
    id: number
    /** Empty for the owner's own tray without a name. */
    tray: string
    supplier_ref: string
    height_mm: number
    thickness_mm: number
    length_mm: number | null
    barrel_mm: number | null
    spring_end: NonNullable<StockSpring['end']> | null
    material: NonNullable<StockSpring['material']> | null
    in_stock: number | null
    price: string | null
    note: string | null
    extra: string
  }
  order_line: { id: number; line: string }
  gauge: { id: number; line: string }
  stock_change: {
    revision_id: number
    position: number
    kind: 'spring' | 'order' | 'gauge'
    record_id: number
    before: string | null
    after: string | null
  }
}
