import { useCallback, useEffect, useRef, useState } from 'react'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { call } from '../../api/hooks.ts'
import { draftMirror } from './draft-mirror.ts'

export type Keeping = 'nothing' | 'keeping' | 'kept' | 'not-kept'

/** Keeping that takes longer than this is said; what is quick would only flicker. */
const slowMs = 300
const retryMs = 3000

/**
 * Keeps the entry as a draft, in the window at once and in the library with every key stroke: one call at a time,
 * each with all that was typed by then. Tries again where that failed.
 */
export const useKeptDraft = (caliberId: number | null, entry: CaliberEntry, stored: CaliberEntry) => {
  const [keeping, setKeeping] = useState<Keeping>('nothing')
  const latest = useRef(entry)
  const unsent = useRef(false)
  const stopped = useRef(false)
  const retry = useRef(0)
  const slow = useRef(0)
  const sending = useRef<Promise<void>>(undefined)

  const sendAll = useCallback(async (): Promise<void> => {
    while (unsent.current && !stopped.current) {
      const sent = latest.current
      unsent.current = false
      try {
        await call('draft.keep', { caliberId, entry: sent })
        // Nothing differs from the library any more.
        if (sent === stored) await call('draft.discard', { caliberId })
      } catch {
        unsent.current = true
        clearTimeout(slow.current)
        setKeeping('not-kept')
        retry.current = window.setTimeout(() => void sendNow.current(), retryMs)
        return
      }
      if (stopped.current || sent !== latest.current) continue
      clearTimeout(slow.current)
      draftMirror.clear(caliberId)
      setKeeping(sent === stored ? 'nothing' : 'kept')
    }
  }, [caliberId, stored])

  const send = useCallback((): Promise<void> => {
    clearTimeout(retry.current)
    sending.current ??= sendAll().finally(() => {
      sending.current = undefined
    })
    return sending.current
  }, [sendAll])
  const sendNow = useRef(send)
  sendNow.current = send

  const keep = useCallback(() => {
    unsent.current = true
    draftMirror.write(caliberId, latest.current)
    clearTimeout(slow.current)
    slow.current = window.setTimeout(() => setKeeping((now) => (now === 'not-kept' ? now : 'keeping')), slowMs)
    void send()
  }, [caliberId, send])

  useEffect(() => {
    if (latest.current === entry) return
    latest.current = entry
    if (!stopped.current) keep()
  }, [entry, keep])

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

  /** No more is kept, and nothing is on its way any more: the entry is about to be saved. */
  const stop = useCallback(async (): Promise<void> => {
    stopped.current = true
    clearTimeout(retry.current)
    clearTimeout(slow.current)
    await sending.current
  }, [])
  /** The entry is in the library: the window need not keep it. */
  const saved = useCallback(() => draftMirror.clear(caliberId), [caliberId])
  /** The entry was not saved after all: it is a draft again. */
  const goOn = useCallback(() => {
    stopped.current = false
    keep()
  }, [keep])
  return { keeping, send, stop, saved, goOn }
}
