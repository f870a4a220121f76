import type { CaliberEntry, EntryReading } from '../../../core/exchange/library-file.ts'
import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import type { ListKey } from '../../../core/fields/list-fields.ts'
import type { Overrule } from '../../../core/proofs/severity.ts'
import { withOverrule } from '../../../core/record/with-overrule.ts'
import { withSourceUnit } from '../../../core/record/with-source-unit.ts'
import { cellOfField, cellOfList, cellOfNote, cellOfOverrule } from './cells.ts'
import { chosenIndex } from './chosen-reading.ts'
import {
  addReading,
  chooseReading,
  giveSource,
  noteReading,
  removeReading,
  withReadings,
  withSource,
} from './reading-steps.ts'

/** The source that rides along on values typed from now on. */
export interface SourceInHand {
  readonly source: string
  readonly page: string
}

/** The units in which each source prints its sizes, by its key. */
export type SourceUnitsByKey = Readonly<Record<string, string | undefined>>

/** One thing done to the entry: where, in what words, and the entry before it. */
export interface EntryStep {
  readonly cell: string
  readonly before: CaliberEntry
}

export interface EntryState {
  readonly entry: CaliberEntry
  readonly past: readonly EntryStep[]
  readonly future: readonly EntryStep[]
  /** The cell being typed in: what follows there joins the last step, until it is left. */
  readonly typingIn: string | null
  /** Where undo or redo last worked, so that the form can go there. */
  readonly cameTo: string | null
  readonly inHand: SourceInHand
  readonly units: SourceUnitsByKey
  /** What was typed in the cell one is in, where the entry keeps it with the unit of its source. */
  readonly typed: { readonly cell: string; readonly text: string } | null
}

export type EntryAction =
  | {
      readonly type: 'type-value'
      readonly key: CaliberFieldKey
      readonly printed: string
    }
  | {
      readonly type: 'type-in-list'
      readonly list: ListKey
      readonly line: number
      readonly column: string
      readonly text: string
    }
  | { readonly type: 'remove-line'; readonly list: ListKey; readonly line: number }
  | { readonly type: 'add-reading'; readonly key: CaliberFieldKey }
  | { readonly type: 'choose-reading'; readonly key: CaliberFieldKey; readonly index: number }
  | { readonly type: 'note-reading'; readonly key: CaliberFieldKey; readonly index: number; readonly note: string }
  | { readonly type: 'remove-reading'; readonly key: CaliberFieldKey; readonly index: number }
  | { readonly type: 'give-source'; readonly keys: readonly CaliberFieldKey[] }
  | { readonly type: 'overrule'; readonly proof: string; readonly overrule: Omit<Overrule, 'proof'> | null }
  | { readonly type: 'take-in-hand'; readonly inHand: SourceInHand }
  | { readonly type: 'know-units'; readonly units: SourceUnitsByKey }
  | { readonly type: 'leave-cell' }
  | { readonly type: 'replace'; readonly entry: CaliberEntry }
  | { readonly type: 'undo' }
  | { readonly type: 'redo' }

/** How many steps are kept; a whole caliber typed twice over fits. */
const stepsKept = 400

export const openEntry = (
  entry: CaliberEntry,
  inHand: SourceInHand = { source: '', page: '' },
  units: SourceUnitsByKey = {},
): EntryState => ({
  entry,
  inHand,
  units,
  typed: null,
  past: [],
  future: [],
  typingIn: null,
  cameTo: null,
})

/** True for the two names, which stand at the head of the entry and have no source. */
export const isName = (key: CaliberFieldKey): key is 'maker' | 'designation' => key === 'maker' || key === 'designation'

/** The units of the source that a value has, or takes with its first character. */
export const unitsUnder = (
  reading: EntryReading | undefined,
  inHand: SourceInHand,
  units: SourceUnitsByKey,
): string | undefined => units[(reading && reading.printed !== '' ? reading.source : inHand.source) ?? '']

/**
 * A value takes the source in hand with its first character; corrected later, it keeps the one it has. Where that source
 * leaves the unit of its sizes unprinted, the value is kept with the unit written.
 */
const typeValue = (
  { entry, inHand, units }: EntryState,
  { key, printed: text }: Extract<EntryAction, { type: 'type-value' }>,
): CaliberEntry => {
  if (isName(key)) return { ...entry, [key]: text }
  const readings = entry.fields[key] ?? []
  const at = chosenIndex(readings)
  const reading = readings[at]
  const printed = withSourceUnit(key, text, unitsUnder(reading, inHand, units))
  if (reading === undefined) return withReadings(entry, key, [withSource({ printed }, inHand)])
  const typed = { ...reading, printed }
  return withReadings(entry, key, readings.with(at, reading.printed === '' ? withSource(typed, inHand) : typed))
}

const typeInList = (
  entry: CaliberEntry,
  { list, line, column, text }: Extract<EntryAction, { type: 'type-in-list' }>,
): CaliberEntry => {
  const lines = entry[list]
  const typed = { ...lines[line], [column]: text }
  return { ...entry, [list]: line < lines.length ? lines.with(line, typed) : [...lines, typed] }
}

/** Adds a step; typing that goes on in the same cell joins the step before. */
const stepTo = (state: EntryState, entry: CaliberEntry, cell: string, typing: boolean): EntryState => ({
  ...state,
  entry,
  typed: null,
  past:
    typing && state.typingIn === cell
      ? state.past
      : [...state.past.slice(-(stepsKept - 1)), { cell, before: state.entry }],
  future: [],
  typingIn: typing ? cell : null,
  cameTo: null,
})

const undo = (state: EntryState): EntryState => {
  const step = state.past.at(-1)
  if (step === undefined) return state
  return {
    ...state,
    entry: step.before,
    past: state.past.slice(0, -1),
    future: [{ cell: step.cell, before: state.entry }, ...state.future],
    typingIn: null,
    typed: null,
    cameTo: step.cell,
  }
}

const redo = (state: EntryState): EntryState => {
  const [step, ...future] = state.future
  if (step === undefined) return state
  return {
    ...state,
    entry: step.before,
    past: [...state.past, { cell: step.cell, before: state.entry }],
    future,
    typingIn: null,
    typed: null,
    cameTo: step.cell,
  }
}

/** Every change of an entry being typed, each a step that can be taken back and done again. */
export const entryReducer = (state: EntryState, action: EntryAction): EntryState => {
  const { entry } = state
  switch (action.type) {
    case 'type-value': {
      const cell = cellOfField(action.key)
      return { ...stepTo(state, typeValue(state, action), cell, true), typed: { cell, text: action.printed } }
    }
    case 'type-in-list':
      return stepTo(state, typeInList(entry, action), cellOfList(action.list, action.line, action.column), true)
    case 'remove-line': {
      if (action.line >= entry[action.list].length) return state
      const lines = entry[action.list].toSpliced(action.line, 1)
      return stepTo(state, { ...entry, [action.list]: lines }, cellOfList(action.list, action.line), false)
    }
    case 'add-reading':
      return stepTo(state, addReading(entry, action.key, state.inHand), cellOfField(action.key), false)
    case 'choose-reading':
      return stepTo(state, chooseReading(entry, action.key, action.index), cellOfField(action.key), false)
    case 'note-reading':
      return stepTo(state, noteReading(entry, action.key, action.index, action.note), cellOfNote(action.key), true)
    case 'remove-reading':
      if (entry.fields[action.key]?.[action.index] === undefined) return state
      return stepTo(state, removeReading(entry, action.key, action.index), cellOfField(action.key), false)
    case 'give-source': {
      const [first] = action.keys
      if (first === undefined) return state
      return stepTo(state, giveSource(entry, action.keys, state.inHand), cellOfField(first), false)
    }
    case 'overrule':
      return stepTo(state, withOverrule(entry, action.proof, action.overrule), cellOfOverrule(action.proof), false)
    case 'replace':
      return stepTo(state, action.entry, cellOfField('maker'), false)
    case 'take-in-hand':
      return { ...state, inHand: action.inHand }
    case 'know-units':
      return { ...state, units: action.units }
    case 'leave-cell':
      return state.typingIn === null ? state : { ...state, typingIn: null, typed: null }
    case 'undo':
      return undo(state)
    case 'redo':
      return redo(state)
  }
}
