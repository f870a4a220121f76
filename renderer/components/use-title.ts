import { useEffect } from 'react'

/** Names the window after what is on the page, for as long as it is there. */
export const useTitle = (title: string): void => {
  useEffect(() => {
    document.title = `${title} – Lignebook`
    return () => {
      document.title = 'Lignebook'
    }
  }, [title])
}
