import { useEffect, useState } from 'react'

/** How long typing must rest before a value that cannot be read is called so. */
const restMs = 900

/** Whether what is typed has come to rest: at once where the field has been left. */
export const useRest = (typed: string, focused: boolean): boolean => {
  const [rested, setRested] = useState(typed)
  useEffect(() => {
    const timer = setTimeout(() => setRested(typed), focused ? restMs : 0)
    return () => clearTimeout(timer)
  }, [typed, focused])
  return rested === typed
}
