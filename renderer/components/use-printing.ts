import { useEffect, useState } from 'react'
import { flushSync } from 'react-dom'

/** True while the page is printed: then everything must stand on it, not only what is in sight. */
export const usePrinting = (): boolean => {
  const [printing, setPrinting] = useState(false)
  useEffect(() => {
    // The paper is laid out as soon as the event is over.
    const begin = () => flushSync(() => setPrinting(true))
    const end = () => setPrinting(false)
    addEventListener('beforeprint', begin)
    addEventListener('afterprint', end)
    return () => {
      removeEventListener('beforeprint', begin)
      removeEventListener('afterprint', end)
    }
  }, [])
  return printing
}
