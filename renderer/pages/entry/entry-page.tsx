import { useEffect, useState } from 'react'
import { useLocation } from 'wouter'
import { blankEntry } from '../../../core/record/entry.ts'
import { call, useSources } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'
import { draftMirror } from './draft-mirror.ts'
import { EntryForm } from './entry-form.tsx'
import { nextMaker } from './next-maker.ts'
import './entry.css'

/** What the form opens with: what this window had not yet kept, else the library's draft, else what is stored. */
const openForm = async (caliberId: number | null) => {
  const [stored, { draft }] = await Promise.all([
    caliberId === null
      ? { ...blankEntry(), maker: nextMaker.take() }
      : call('caliber.read', { id: caliberId }).then(({ entry }) => entry),
    call('draft.read', { caliberId }),
  ])
  const kept = draft?.entry
  const opened = draftMirror.read(caliberId) ?? kept ?? stored
  return { stored, opened: JSON.stringify(opened) === JSON.stringify(stored) ? stored : opened }
}

interface EntryPageProps {
  readonly caliberId: number | null
  /** The field or list at which the form opens. */
  readonly startAt?: string | undefined
}

/** The entry form: a new caliber, or the change of one. */
export const EntryPage = ({ caliberId, startAt }: EntryPageProps) => {
  // Read once for each visit: while the form is open, it is the form that knows, whatever else is read again.
  const [form, setForm] = useState<Awaited<ReturnType<typeof openForm>>>()
  const [failure, setFailure] = useState<unknown>()
  const [round, setRound] = useState(0)
  const [, go] = useLocation()
  const sources = useSources()
  useEffect(() => {
    let gone = false
    openForm(caliberId).then(
      (opened) => gone || setForm(opened),
      (error: unknown) => gone || setFailure(error),
    )
    return () => {
      gone = true
    }
  }, [caliberId])
  const error = failure ?? sources.error
  if (error) return <p className="notice">{failureText(error)}</p>
  if (form === undefined || sources.data === undefined) return <p className="notice quiet">Opening…</p>
  const enterNext = (maker: string) => {
    if (caliberId !== null) {
      nextMaker.leave(maker)
      go('/new')
      return
    }
    const stored = { ...blankEntry(), maker }
    setForm({ stored, opened: stored })
    setRound(round + 1)
  }
  return (
    <EntryForm
      key={round}
      caliberId={caliberId}
      startAt={
        startAt ??
        (form.opened === form.stored && form.stored.maker !== '' && caliberId === null ? 'designation' : undefined)
      }
      {...form}
      sources={sources.data.sources}
      onNext={enterNext}
    />
  )
}
