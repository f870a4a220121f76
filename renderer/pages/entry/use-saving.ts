import { useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { useLocation } from 'wouter'
import type { CaliberEntry, Source } from '../../../core/exchange/library-file.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { call } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import { foundProblems } from './entry-problems.ts'
import { settledEntry } from './settled-entry.ts'
import type { useKeptDraft } from './use-kept-draft.ts'

interface Saving {
  readonly caliberId: number | null
  readonly entry: CaliberEntry
  readonly draft: ReturnType<typeof useKeptDraft>
  /** What is said once the caliber is in the library. */
  readonly savedText: () => string
  readonly onNext: (maker: string) => void
}

/** Saves the entry or a source, and remembers why that was refused. */
export const useSaving = ({ caliberId, entry, draft, savedText, onNext }: Saving) => {
  const [, go] = useLocation()
  const queries = useQueryClient()
  const [refusal, setRefusal] = useState<{ readonly text: string } | null>(null)
  /** True once saving met values that cannot be read: each is then marked. */
  const [insist, setInsist] = useState(false)
  const refuse = (error: unknown) => setRefusal({ text: failureText(error) })

  const save = async (next: boolean) => {
    const { length } = foundProblems(readEntry(entry).problems)
    setRefusal(null)
    if (length > 0) {
      setInsist(true)
      const count = length === 1 ? 'one value' : `${length} values`
      setRefusal({ text: `Not saved: ${count} cannot be read. Nothing is lost.` })
      return
    }
    await draft.stop()
    try {
      const { id } = await call('caliber.save', { caliberId, entry: settledEntry(entry) })
      draft.saved()
      await queries.invalidateQueries()
      say(savedText())
      if (next) onNext(entry.maker.trim())
      else go(`/caliber/${id}`)
    } catch (error) {
      draft.goOn()
      refuse(error)
    }
  }

  const addSource = async (source: Source): Promise<boolean> => {
    try {
      await call('source.save', { source })
      await queries.invalidateQueries({ queryKey: ['sources.list'] })
      say(`Added ${source.title} to the sources.`)
      return true
    } catch (error) {
      refuse(error)
      return false
    }
  }
  const forget = () => {
    setRefusal(null)
    setInsist(false)
  }
  return { save, addSource, refusal, insist, refuse, forget }
}
