import { useQueryClient } from '@tanstack/react-query'
import { useLocation } from 'wouter'
import { caliberFields } from '../../../core/fields/caliber-fields.ts'
import { isListKey } from '../../../core/record/read-entry.ts'
import { say } from '../../components/say.ts'
import { glossaryPlace } from '../glossary/glossary-place.ts'
import type { useKeptDraft } from './use-kept-draft.ts'

interface Leaving {
  readonly caliberId: number | null
  readonly draft: ReturnType<typeof useKeptDraft>
  /** The caliber as it is called in the form. */
  readonly name: string
  readonly changed: boolean
}

/** The ways out of the form by which nothing is saved: back, and to the glossary. The draft waits. */
export const useLeaving = ({ caliberId, draft, name, changed }: Leaving) => {
  const [, go] = useLocation()
  const queries = useQueryClient()

  const leave = async () => {
    await draft.send()
    await queries.invalidateQueries({ queryKey: ['draft.read'] })
    await queries.invalidateQueries({ queryKey: ['library.status'] })
    if (changed) say(`What was typed of ${name || 'the new caliber'} is kept as a draft.`)
    go(caliberId === null ? '/' : `/caliber/${caliberId}`)
  }

  /** To the glossary at the word one is in; one key comes back to the field. */
  const lookUp = async (cell: string) => {
    const [word = ''] = cell.split('.')
    const known = Object.hasOwn(caliberFields, word) || isListKey(word)
    await draft.send()
    const form = caliberId === null ? '/new' : `/caliber/${caliberId}/edit`
    glossaryPlace.from = known ? `${form}/${word}` : form
    go(known ? `/glossary/${word}` : '/glossary')
  }
  return { leave, lookUp }
}
