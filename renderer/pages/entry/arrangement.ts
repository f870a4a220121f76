import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { type ListKey, listFields } from '../../../core/fields/list-fields.ts'
import { foldHeading } from '../../../core/record/fold-heading.ts'
import { formSections } from './form-sections.ts'

/** What a source prints of a caliber: a field or a list. */
export type Placed = CaliberFieldKey | ListKey

export const isField = (key: string): key is CaliberFieldKey => Object.hasOwn(caliberFields, key)
const isPlaced = (key: string): key is Placed => isField(key) || Object.hasOwn(listFields, key)

/** Everything that can be placed, in the order of the form. */
const formOrder: readonly Placed[] = formSections.flatMap(({ keys, lists }) => [...keys, ...lists])

/** The columns of a source that this version knows, each once. */
export const knownColumns = (columns: readonly string[] = []): readonly Placed[] => [
  ...new Set(columns.filter(isPlaced)),
]

/** The order of a book as the form walks it: the names first where the book's columns leave them out. */
export const bookOrder = (columns: readonly string[] = []): readonly Placed[] => {
  const known = knownColumns(columns)
  if (known.length === 0) return []
  return [...(['maker', 'designation'] as const).filter((name) => !known.includes(name)), ...known]
}

export interface Arrangement {
  readonly picked: readonly Placed[]
  /** Where one stands in the list. */
  readonly at: Placed
  /** The first letters of a heading, typed to go to it. */
  readonly letters: string
}

export type ArrangeAction =
  | { readonly type: 'go'; readonly by: 1 | -1 }
  | { readonly type: 'go-to'; readonly key: Placed }
  | { readonly type: 'letter'; readonly letter: string }
  | { readonly type: 'pick' }
  | { readonly type: 'move'; readonly by: 1 | -1 }
  | { readonly type: 'clear' }

/** The list from top to bottom: what is picked in its order, then the rest in that of the form. */
export const rowsOf = (picked: readonly Placed[]): readonly Placed[] => [
  ...picked,
  ...formOrder.filter((key) => !picked.includes(key)),
]

export const openArrangement = (columns: readonly string[] = []): Arrangement => {
  const picked = knownColumns(columns)
  return { picked, at: rowsOf(picked)[picked.length] ?? 'maker', letters: '' }
}

/** The labels and the headings of all four languages, folded. */
const headings: ReadonlyMap<Placed, readonly string[]> = new Map(
  formOrder.map((key) => {
    const { label, names } = isField(key) ? caliberFields[key] : listFields[key]
    return [key, [label, ...names.en, ...names.fr, ...names.de, ...names.nl].map(foldHeading)]
  }),
)

const find = (rows: readonly Placed[], letters: string): Placed | undefined => {
  const wanted = foldHeading(letters)
  // The heading that is just that before one that only begins so, and what is not picked yet before what is.
  const whole = rows.find((key) => headings.get(key)?.includes(wanted))
  return whole ?? rows.find((key) => headings.get(key)?.some((heading) => heading.startsWith(wanted)))
}

export const arrange = (state: Arrangement, action: ArrangeAction): Arrangement => {
  const { picked, at } = state
  const rows = rowsOf(picked)
  switch (action.type) {
    case 'go':
      return { ...state, at: rows[rows.indexOf(at) + action.by] ?? at, letters: '' }
    case 'go-to':
      return { ...state, at: action.key, letters: '' }
    case 'letter': {
      const unpicked = rows.slice(picked.length)
      const letters = state.letters + action.letter
      const found = find([...unpicked, ...picked], letters) ?? find([...unpicked, ...picked], action.letter)
      if (found === undefined) return state
      return { ...state, at: found, letters: find([found], letters) ? letters : action.letter }
    }
    case 'pick': {
      const next = rows[rows.indexOf(at) + 1] ?? at
      const now = picked.includes(at) ? picked.filter((key) => key !== at) : [...picked, at]
      return { picked: now, at: next, letters: '' }
    }
    case 'move': {
      const from = picked.indexOf(at)
      const to = from + action.by
      if (from < 0 || to < 0 || to >= picked.length) return state
      return { ...state, picked: picked.toSpliced(from, 1).toSpliced(to, 0, at), letters: '' }
    }
    case 'clear':
      return { picked: [], at: 'maker', letters: '' }
  }
}
