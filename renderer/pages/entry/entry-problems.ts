import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { type ListColumn, listFields } from '../../../core/fields/list-fields.ts'
import { type EntryProblem, isListKey } from '../../../core/record/read-entry.ts'
import { wordProblem } from '../../../core/wording/quantity-problem.ts'
import { cellOfField, cellOfList } from './cells.ts'

export interface FoundProblem {
  readonly cell: string
  readonly list: string | null
  readonly line: number
  readonly text: string
}

/** What stands between the entry and its being saved: each problem with the cell to go to and the sentence for it. */
export const foundProblems = (problems: readonly EntryProblem[]): readonly FoundProblem[] =>
  problems.map(({ field, index, column, problem }) => {
    if (isListKey(field)) {
      const columns: Readonly<Record<string, ListColumn>> = listFields[field].columns
      const label = `${listFields[field].label}, line ${index + 1}, ${(columns[column ?? '']?.label ?? '').toLowerCase()}`
      return { cell: cellOfList(field, index, column), list: field, line: index, text: wordProblem(label, problem) }
    }
    const key = field as CaliberFieldKey
    return { cell: cellOfField(key), list: null, line: index, text: wordProblem(caliberFields[key].label, problem) }
  })
