import { useRef, useState } from 'react'

const step = 1.25
const [nearest, farthest] = [1, 8]

/** What is looked at: which sheet of which file, how large, and where the frame stands. */
export const useViewing = (firstSheet: number) => {
  const frame = useRef<HTMLElement>(null)
  const [zoom, setZoom] = useState(1)
  const [sheet, setSheet] = useState(firstSheet)
  const [sheets, setSheets] = useState(1)
  const enlarge = (by: 1 | -1) =>
    setZoom((now) => Math.min(farthest, Math.max(nearest, by > 0 ? now * step : now / step)))
  const scroll = (across: number, down: number) => {
    const place = frame.current
    place?.scrollBy({ left: across * place.clientWidth * 0.25, top: down * place.clientHeight * 0.25 })
  }
  /** Turns within the file, and answers false at either end of it. */
  const turn = (by: 1 | -1): boolean => {
    const next = Math.min(sheet, sheets) + by
    if (next < 1 || next > sheets) return false
    setSheet(next)
    return true
  }
  return { frame, zoom, enlarge, scroll, sheet: Math.max(1, sheet), setSheet, sheets, setSheets, turn }
}
