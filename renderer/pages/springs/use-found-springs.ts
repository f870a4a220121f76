import { useDeferredValue, useEffect, useMemo, useState } from 'react'
import { findSprings, type SpringSorting, shelveSprings, traysOf } from '../../../core/springs/find-springs.ts'
import type { StoredSpring } from './spring-columns.ts'
import { springsPlace } from './springs-place.ts'

/** What is asked of the springs, and those that answer, in the order asked for. */
export const useFoundSprings = (springs: readonly StoredSpring[]) => {
  const [text, setText] = useState('')
  const [tray, setTray] = useState(springsPlace.tray)
  const [order, setOrder] = useState<{ readonly by: SpringSorting | null; readonly down: boolean }>({
    by: null,
    down: false,
  })
  useEffect(() => {
    springsPlace.tray = null
  }, [])
  const shelf = useMemo(() => shelveSprings(springs), [springs])
  const trays = useMemo(() => traysOf(springs), [springs])
  const sought = useDeferredValue(text)
  const onTray = trays.some((one) => one.tray === tray) ? tray : null
  const found = useMemo(
    () => findSprings(shelf, { text: sought, tray: onTray, ...order }),
    [shelf, sought, onTray, order],
  )
  /** By a column, then the other way round, then as the library has them. */
  const sort = (by: SpringSorting) =>
    setOrder((now) => (now.by !== by ? { by, down: false } : now.down ? { by: null, down: false } : { by, down: true }))
  return { text, setText, sought, tray: onTray, setTray, trays, order, sort, found }
}
