import { useCallback, useEffect, useRef, useState } from 'react'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { call } from '../../api/hooks.ts'
import { draftMirror } from './draft-mirror.ts'

export type Keeping = 'nothing' | 'keeping' | 'kept' | 'not-kept'

const pauseMs = 180
const retryMs = 3000

/** Keeps the entry as a draft, in the window at once and in the library after a breath; tries again where that failed. */
export const useKeptDraft = (caliberId: number | null, entry: CaliberEntry, stored: CaliberEntry) => {
  const [keeping, setKeeping] = useState<Keeping>('nothing')
  const latest = useRef(entry)
  const unsent = useRef(false)
  const stopped = useRef(false)
  const timer = useRef(0)

  const send = useCallback(async (): Promise<void> => {
    clearTimeout(timer.current)
    if (!unsent.current || stopped.current) return
    const sent = latest.current
    unsent.current = false
    try {
      await call('draft.keep', { caliberId, entry: sent })
      // Nothing differs from the library any more: the draft kept last, which is this one, goes.
      if (sent === stored) await call('draft.discard', { caliberId })
      if (stopped.current || sent !== latest.current) return
      draftMirror.clear(caliberId)
      setKeeping(sent === stored ? 'nothing' : 'kept')
    } catch {
      unsent.current = true
      setKeeping('not-kept')
      timer.current = window.setTimeout(() => void send(), retryMs)
    }
  }, [caliberId, stored])

  useEffect(() => {
    if (latest.current === entry) return
    latest.current = entry
    if (stopped.current) return
    unsent.current = true
    draftMirror.write(caliberId, entry)
    setKeeping('keeping')
    clearTimeout(timer.current)
    timer.current = window.setTimeout(() => void send(), pauseMs)
  }, [caliberId, entry, send])

  useEffect(() => {
    const flush = () => void send()
    addEventListener('pagehide', flush)
    addEventListener('blur', flush)
    return () => {
      removeEventListener('pagehide', flush)
      removeEventListener('blur', flush)
      flush()
    }
  }, [send])

  /** No more is kept: the entry was saved or its draft discarded. */
  const stop = useCallback(() => {
    stopped.current = true
    clearTimeout(timer.current)
    draftMirror.clear(caliberId)
  }, [caliberId])
  const goOn = useCallback(() => {
    stopped.current = false
  }, [])
  return { keeping, send, stop, goOn }
}
