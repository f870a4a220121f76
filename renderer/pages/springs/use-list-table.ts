import { useEffect, useState } from 'react'
import {
  type SpringTable,
  type SpringTableReading,
  springTableReader,
} from '../../../core/exchange/read-spring-table.ts'

/** A list that was opened, and how it is to be read. */
export interface OpenedList {
  readonly rows: readonly (readonly string[])[]
  readonly reading: SpringTableReading
}

/** How long the page may be kept from its keys at a time, and how many rows are read between looks at the clock. */
const stretchMs = 12
const rowsAtOnce = 50
const shownEveryMs = 80

interface ReadList {
  /** What was last read to its end, and of which list. */
  readonly of: OpenedList | null
  readonly table: SpringTable | null
  /** How many rows of the list in hand are read so far. */
  readonly rowsRead: number
}

/** Reads a list stretch by stretch, so that a long one keeps no key waiting. What was read before stays until the next is whole. */
export const useListTable = (list: OpenedList | null) => {
  const [read, setRead] = useState<ReadList>({ of: null, table: null, rowsRead: 0 })
  useEffect(() => {
    if (list === null) {
      setRead({ of: null, table: null, rowsRead: 0 })
      return
    }
    const reader = springTableReader(list.rows, list.reading)
    let [at, shownAt] = [0, performance.now()]
    let timer = 0
    const go = () => {
      const until = performance.now() + stretchMs
      let more = true
      while (more && performance.now() < until) {
        at += rowsAtOnce
        more = reader.readTo(at)
      }
      if (!more) {
        setRead({ of: list, table: reader.table(), rowsRead: list.rows.length })
        return
      }
      if (performance.now() - shownAt > shownEveryMs) {
        shownAt = performance.now()
        setRead((now) => ({ ...now, rowsRead: at }))
      }
      timer = window.setTimeout(go)
    }
    go()
    return () => clearTimeout(timer)
  }, [list])
  return { table: read.table, rowsRead: read.rowsRead, whole: read.of === list }
}
