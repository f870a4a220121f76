import { useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import type { Source } from '../../../core/exchange/library-file.ts'
import { call } from '../../api/hooks.ts'
import { say } from '../../components/say.ts'
import type { SourceInHand } from './entry-state.ts'
import { turnPage } from './turn-page.ts'

/** What one does with the book in hand: turn its page, and arrange the fields that it prints. */
export const useHandbook = (
  source: (Source & { readonly values: number }) | undefined,
  inHand: SourceInHand,
  take: (inHand: SourceInHand) => void,
) => {
  const queries = useQueryClient()
  const [arranging, setArranging] = useState(false)

  const arrange = () => {
    if (source === undefined) say('Choose a source first: the order of the fields is kept with it.')
    else setArranging(true)
  }
  const keepColumns = async (columns: readonly string[]): Promise<void> => {
    if (source === undefined) return
    // How many values rest on it is the library's own count, no part of a source.
    const { values: _, columns: _before, ...plain } = source
    await call('source.save', { source: { ...plain, ...(columns.length > 0 ? { columns: [...columns] } : {}) } })
    await queries.invalidateQueries()
    say(columns.length > 0 ? `The form follows ${source.title || source.key}.` : 'The form is in its own order again.')
  }
  const turn = (by: 1 | -1) => {
    const page = turnPage(inHand.page, by)
    if (page === inHand.page) {
      say(`Page ${page || 'none'} is left as it is: type the one you are on.`)
      return
    }
    take({ ...inHand, page })
    say(`Page ${page}.`)
  }
  return { arranging, arrange, stopArranging: () => setArranging(false), keepColumns, turn }
}
