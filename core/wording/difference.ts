import type { EntryReading, Source } from '../exchange/library-file.ts'
import { stockSpringLabel } from '../exchange/read-stock-spring.ts'
import { type ListColumn, type ListKey, listFields } from '../fields/list-fields.ts'
import type { OrderLine } from '../orders/order-line.ts'
import type { Overrule } from '../proofs/severity.ts'
import type { EntryDifference } from '../record/compare-entries.ts'
import { labelOf } from '../record/label-of.ts'
import { sameJson } from '../record/same-json.ts'
import type { GaugeTable } from '../springs/gauge-table.ts'
import type { StockSpring } from '../springs/stock-spring.ts'
import { proofTitle } from './proof-title.ts'
import { overruleWords } from './severity.ts'

/** A difference as a person reads it: what it is in, and what stood there before and after, line by line. */
export interface WordedDifference {
  readonly key: string
  readonly label: string
  readonly before: readonly string[]
  readonly after: readonly string[]
}

const readingText = (reading: EntryReading, alone: boolean): string => {
  const { printed, source, page, note, chosen } = reading
  const origin = [source, page && `p. ${page}`].filter(Boolean).join(' ')
  return [
    printed === '' ? 'left empty' : printed,
    origin && ` (${origin})`,
    note && `, ${note}`,
    chosen === true && !alone && ', the one that counts',
  ]
    .filter(Boolean)
    .join('')
}

const plain = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number'
    ? String(value)
    : Array.isArray(value)
      ? value.map(plain).join(', ')
      : JSON.stringify(value)

const lineText = (list: ListKey, line: Readonly<Record<string, unknown>>): string => {
  const columns: Readonly<Record<string, ListColumn>> = listFields[list].columns
  return Object.entries(line)
    .filter(([, value]) => value !== undefined && value !== '')
    .map(([key, value]) => {
      const text = columns[key]?.choices?.[String(value)] ?? plain(value)
      return Object.hasOwn(columns, key) ? text : `${key} ${text}`
    })
    .join(', ')
}

/**
 * Says what stood before and after in one field, list, overrule or other part of a caliber.
 *
 * @example
 * wordDifference({ what: 'field', key: 'thirdWheel', before: [{ printed: '57' }], after: [{ printed: '75', source: 'manuel', page: '12' }] }).after // ['75 (manuel p. 12)']
 */
export const wordDifference = (difference: EntryDifference): WordedDifference => {
  const { key } = difference
  const label = labelOf(key)
  switch (difference.what) {
    case 'field': {
      const say = (readings: readonly EntryReading[]) =>
        readings.map((reading) => readingText(reading, readings.length === 1))
      return { key, label, before: say(difference.before), after: say(difference.after) }
    }
    case 'list':
      return difference.moved
        ? { key, label, before: ['the same lines'], after: ['in another order'] }
        : {
            key,
            label,
            before: difference.before.map((line) => lineText(difference.key, line)),
            after: difference.after.map((line) => lineText(difference.key, line)),
          }
    case 'overrule': {
      const say = (overrule: Overrule | undefined) =>
        overrule === undefined ? [] : [`${overruleWords[overrule.severity]}: ${overrule.reason}`]
      return {
        key,
        label: `Overrule of “${proofTitle(key)}”`,
        before: say(difference.before),
        after: say(difference.after),
      }
    }
    case 'other': {
      const say = (value: unknown) => (value === undefined ? [] : [plain(value)])
      return { key, label, before: say(difference.before), after: say(difference.after) }
    }
  }
}

const sourceLabels: Readonly<Record<string, string>> = {
  key: 'Key',
  title: 'Title',
  author: 'Author',
  year: 'Year',
  edition: 'Edition',
  language: 'Language',
  unitsAsPrinted: 'Units as printed',
  notes: 'Notes',
}

/**
 * Says what differs between two states of a source; null stands for no source.
 *
 * @example
 * wordSourceDifferences({ key: 'hb', title: 'Handbook' }, { key: 'hb', title: 'Handbook', year: 1931 }) // [{ key: 'year', label: 'Year', before: [], after: ['1931'] }]
 */
export const wordSourceDifferences = (before: Source | null, after: Source | null): WordedDifference[] =>
  differencesOf(before, after, sourceLabels)

const springLabels: Readonly<Record<string, string>> = Object.fromEntries(
  [
    'tray',
    'supplierRef',
    'heightMm',
    'thicknessMm',
    'lengthMm',
    'barrelMm',
    'end',
    'material',
    'inStock',
    'price',
    'note',
  ].map((key) => [key, stockSpringLabel(key)]),
)

/**
 * Says what differs between two states of a spring in the tray; null stands for no spring.
 *
 * @example
 * wordSpringDifferences({ supplierRef: 'A', heightMm: 1.5, thicknessMm: 0.1, inStock: 3 }, { supplierRef: 'A', heightMm: 1.5, thicknessMm: 0.1, inStock: 2 }) // [{ key: 'inStock', label: 'In stock', before: ['3'], after: ['2'] }]
 */
export const wordSpringDifferences = (before: StockSpring | null, after: StockSpring | null): WordedDifference[] =>
  differencesOf(before, after, springLabels)

const orderLabels: Readonly<Record<string, string>> = {
  kind: 'Kind',
  what: 'What',
  quantity: 'Quantity',
  caliber: 'Caliber',
  supplierRef: 'Supplier’s number',
  tray: 'Supplier',
  source: 'Source',
  page: 'Page',
  note: 'Note',
  state: 'State',
  at: 'Put on the list',
}

/**
 * Says what differs between two states of a line of the order list; null stands for no line.
 *
 * @example
 * wordOrderDifferences(null, null) // []
 */
export const wordOrderDifferences = (before: OrderLine | null, after: OrderLine | null): WordedDifference[] =>
  differencesOf(named(before), named(after), orderLabels)

/** A line with its caliber as a name. */
const named = (line: OrderLine | null) =>
  line?.caliber === undefined ? line : { ...line, caliber: `${line.caliber.maker} ${line.caliber.designation}` }

const gaugeLabels: Readonly<Record<string, string>> = {
  name: 'Gauge',
  measures: 'Measures',
  place: 'Which of several numbers',
  source: 'Source',
  page: 'Page',
  rows: 'Rows',
}

/**
 * Says what differs between two states of a gauge table; null stands for no table.
 *
 * @example
 * wordGaugeDifferences(null, { name: 'Harrow', measures: 'thickness', rows: [{ number: '14', mm: 0.12 }] }).at(-1) // { key: 'rows', label: 'Rows', before: [], after: ['14 = 0.12 mm'] }
 */
export const wordGaugeDifferences = (before: GaugeTable | null, after: GaugeTable | null): WordedDifference[] =>
  differencesOf(withRows(before), withRows(after), gaugeLabels)

/** A table with its rows as one line of text. */
const withRows = (table: GaugeTable | null) =>
  table && { ...table, rows: table.rows.map(({ number, mm }) => `${number} = ${mm} mm`).join(', ') }

type Keyed = Readonly<Record<string, unknown>>

const differencesOf = (before: Keyed | null, after: Keyed | null, labels: Readonly<Record<string, string>>) => {
  const say = (value: unknown) => (value === undefined ? [] : [plain(value)])
  return [...new Set([...Object.keys(labels), ...Object.keys(before ?? {}), ...Object.keys(after ?? {})])]
    .filter((key) => !sameJson(before?.[key], after?.[key]))
    .map((key) => ({ key, label: labels[key] ?? key, before: say(before?.[key]), after: say(after?.[key]) }))
}
