import { gaugeNumber } from './gauge-number.ts'
import type { GaugeMeasure, GaugeRow, GaugeTable } from './gauge-table.ts'
import { type GaugeWord, gaugeWords } from './gauge-words.ts'

/** A printed gauge looked up in a table of its owner's. */
export interface GaugeRead {
  readonly table: GaugeTable
  readonly row: GaugeRow
}

/** Why a printed gauge is not looked up; `core/wording/gauge-sentence.ts` says it. */
export type GaugeDoubt =
  | { readonly code: 'none-named' }
  | { readonly code: 'several-named'; readonly names: readonly string[] }
  | { readonly code: 'other-words'; readonly name: string; readonly words: readonly string[] }
  | { readonly code: 'no-number'; readonly name: string }
  | {
      readonly code: 'several-numbers'
      readonly name: string
      readonly numbers: readonly string[]
      readonly measures: GaugeMeasure
    }
  | { readonly code: 'either-measure'; readonly name: string; readonly number: string }
  | { readonly code: 'other-measure'; readonly name: string; readonly measures: GaugeMeasure }
  | { readonly code: 'no-row'; readonly name: string; readonly number: string; readonly measures: GaugeMeasure }

export interface GaugeAnswer {
  readonly reads: readonly GaugeRead[]
  readonly doubts: readonly GaugeDoubt[]
}

const isName = (word: GaugeWord): boolean => word.kind !== 'times' && word.kind !== 'break'

/** Where a name stands among the words, whole and in its order; null where it does not. */
const placeOf = (name: string, words: readonly GaugeWord[]): { readonly from: number; readonly to: number } | null => {
  const sought = gaugeWords(name).filter(isName)
  if (sought.length === 0) return null
  for (let from = 0; from + sought.length <= words.length; from += 1) {
    if (sought.every(({ folded }, at) => words[from + at]?.folded === folded)) return { from, to: from + sought.length }
  }
  return null
}

/** A number or a size, with what the word before it says that it is. */
interface Figure {
  readonly kind: 'number' | 'size'
  readonly text: string
  readonly names: GaugeMeasure | 'other' | null
}

const isFigure = (word: GaugeWord): word is Extract<GaugeWord, { readonly kind: 'number' | 'size' }> =>
  word.kind === 'number' || word.kind === 'size'

/** The figures, but for those of a length or a barrel; null where a word stands so that it could be either's. */
const figuresOf = (words: readonly GaugeWord[]): readonly Figure[] | null => {
  const labels = words.filter((word) => word.kind === 'label')
  const [one, ...more] = words.filter(isFigure)
  const [label] = labels
  // `14 strength`: of one figure and one word there is no doubt that they belong together.
  if (one !== undefined && more.length === 0 && labels.length === 1)
    return label?.names === 'other' ? [] : [{ ...one, names: label?.names ?? null }]
  const figures: Figure[] = []
  let waiting: GaugeMeasure | 'other' | null = null
  for (const word of words) {
    if (word.kind === 'label') {
      if (waiting !== null) return null
      waiting = word.names
    } else if (isFigure(word)) {
      if (waiting !== 'other') figures.push({ kind: word.kind, text: word.text, names: waiting })
      waiting = null
    } else if (waiting !== null) return null
  }
  return waiting === null ? figures : null
}

/** True where the words are two numbers or more with a sign of times between each two, a size at most behind them. */
const isRow = (words: readonly GaugeWord[]): boolean =>
  words.every(({ kind }, at) => (at % 2 === 1 ? kind === 'times' : kind === 'number' || (kind === 'size' && at > 2)))

const trimmed = (words: readonly GaugeWord[]): readonly GaugeWord[] => {
  const from = words.findIndex(({ kind }) => kind !== 'break')
  return from < 0 ? [] : words.slice(from, words.findLastIndex(({ kind }) => kind !== 'break') + 1)
}

type Picked = { readonly number: string } | { readonly doubt: GaugeDoubt } | null

/** What a print says beside the name of its gauge. */
interface Beside {
  readonly figures: readonly Figure[]
  /** True where the figures stand in a row, with a sign of times between. */
  readonly row: boolean
  /** True where one table only is of that name. */
  readonly alone: boolean
}

/** The number that a table is asked for; null where the print gives none for what the table measures. */
const pick = ({ name, measures, place }: GaugeTable, { figures, row, alone }: Beside): Picked => {
  const numbers = figures.filter(({ kind }) => kind === 'number')
  if (numbers.length === 0) return { doubt: { code: 'no-number', name } }
  const several: Picked = {
    doubt: { code: 'several-numbers', name, numbers: figures.map(({ text }) => text), measures },
  }
  const [mine, second] = numbers.filter(({ names }) => names === measures)
  if (second !== undefined) return several
  if (mine !== undefined) return { number: mine.text }
  const [only] = numbers.filter(({ names }) => names === null)
  if (only === undefined) return null
  if (figures.length > 1) {
    const placed = row && place !== undefined ? numbers[place === 'first' ? 0 : 1] : undefined
    return placed === undefined ? several : { number: placed.text }
  }
  return alone ? { number: only.text } : { doubt: { code: 'either-measure', name, number: only.text } }
}

/**
 * Looks a printed gauge up in its owner's tables. The print must name one gauge whole, say nothing beside it that could
 * make it another, and leave no choice of number; otherwise nothing is looked up, and why is told.
 * @example
 * readGauge('Harrow gauge, strength 2/0', [{ name: 'Harrow', measures: 'thickness', rows: [{ number: '2/0', mm: 0.27 }] }]).reads[0].row.mm // 0.27
 * @example
 * readGauge('Harrow 12 × 14', [{ name: 'Harrow', measures: 'thickness', rows: [{ number: '14', mm: 0.12 }] }]) // { reads: [], doubts: [{ code: 'several-numbers', name: 'Harrow', numbers: ['12', '14'], measures: 'thickness' }] }
 */
export const readGauge = (printed: string, tables: readonly GaugeTable[]): GaugeAnswer => {
  const doubtful = (doubt: GaugeDoubt): GaugeAnswer => ({ reads: [], doubts: [doubt] })
  const words = gaugeWords(printed)
  const all = tables.flatMap((table) => {
    const place = placeOf(table.name, words)
    return place === null ? [] : [{ table, ...place }]
  })
  // A name within a longer one that stands there is not meant: `Harrow` in `Harrow fine`.
  const named = all.filter(
    ({ from, to }) => !all.some((other) => other.from <= from && other.to >= to && other.to - other.from > to - from),
  )
  const [first] = named
  if (first === undefined) return doubtful({ code: 'none-named' })
  const { from, to } = first
  const measured = new Set(named.map(({ table }) => table.measures))
  if (named.some((other) => other.from !== from || other.to !== to) || measured.size < named.length) {
    return doubtful({ code: 'several-named', names: named.map(({ table }) => table.name) })
  }
  const { name } = first.table
  const rest: readonly GaugeWord[] = [
    ...words.slice(0, from),
    { kind: 'break', text: '', folded: '' },
    ...words.slice(to),
  ]
  const others = rest.filter(({ kind }) => kind === 'word')
  if (others.length > 0) return doubtful({ code: 'other-words', name, words: others.map(({ text }) => text) })
  const figures = figuresOf(rest)
  if (figures === null) {
    const unclear = rest.filter(({ kind }) => kind === 'label').map(({ text }) => text)
    return doubtful({ code: 'other-words', name, words: unclear })
  }
  const beside: Beside = { figures, row: isRow(trimmed(rest)), alone: named.length === 1 }
  const reads: GaugeRead[] = []
  const doubts: GaugeDoubt[] = []
  for (const { table } of named) {
    const picked = pick(table, beside)
    if (picked === null) continue
    if ('doubt' in picked) {
      doubts.push(picked.doubt)
      continue
    }
    const number = gaugeNumber(picked.number)
    const row = table.rows.find((each) => gaugeNumber(each.number) === number)
    if (row === undefined) doubts.push({ code: 'no-row', name, number: picked.number, measures: table.measures })
    else reads.push({ table, row })
  }
  if (reads.length + doubts.length === 0)
    return doubtful({ code: 'other-measure', name, measures: first.table.measures })
  // What is in doubt for both tables of one gauge is told once.
  const told = new Set(doubts.map((doubt) => doubt.code))
  return { reads, doubts: told.has('no-row') ? doubts : doubts.slice(0, 1) }
}
