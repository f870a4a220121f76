import { type ReactNode, useEffect, useState } from 'react'
import { AttachmentView } from './attachment-view.tsx'
import type { AttachmentLine } from './use-attachments.ts'
import { useViewing } from './use-viewing.ts'
import { ViewingTools } from './viewing-tools.tsx'

interface ViewerProps {
  readonly lines: readonly AttachmentLine[]
  /** The one shown, and the sheet at which it opens. */
  readonly line: AttachmentLine
  readonly firstSheet?: number
  readonly onShow: (id: number) => void
  /** What a key does here; undefined lets it pass. */
  readonly keyOf: (event: KeyboardEvent) => ViewingKey | undefined
  readonly children?: ReactNode
}

export type ViewingKey = 'next' | 'previous' | 'larger' | 'smaller' | 'up' | 'down' | 'left' | 'right'

/** Pictures and scans one at a time: turned, enlarged and moved by button or key. */
export const Viewer = ({ lines, line, firstSheet = 1, onShow, keyOf, children }: ViewerProps) => {
  const { frame, zoom, enlarge, scroll, sheet, setSheet, sheets, setSheets, turn } = useViewing(firstSheet)
  const at = lines.findIndex(({ id }) => id === line.id)
  // Turning back over the beginning of a file comes to the end of the one before.
  const [fromEnd, setFromEnd] = useState(false)

  // biome-ignore lint/correctness/useExhaustiveDependencies: another file, or another page in hand, opens at its own sheet
  useEffect(() => {
    setSheet(fromEnd ? Number.MAX_SAFE_INTEGER : firstSheet)
    setFromEnd(false)
    frame.current?.scrollTo(0, 0)
  }, [line.id, firstSheet])
  // biome-ignore lint/correctness/useExhaustiveDependencies: how many sheets the next file has is not known yet
  useEffect(() => setSheets(1), [line.sha256])

  const turnOn = (by: 1 | -1) => {
    if (turn(by)) return
    const other = lines[at + by]
    if (other === undefined) return
    setFromEnd(by < 0)
    onShow(other.id)
  }
  const doings: Readonly<Record<ViewingKey, () => void>> = {
    next: () => turnOn(1),
    previous: () => turnOn(-1),
    larger: () => enlarge(1),
    smaller: () => enlarge(-1),
    up: () => scroll(0, -1),
    down: () => scroll(0, 1),
    left: () => scroll(-1, 0),
    right: () => scroll(1, 0),
  }
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const key = event.isComposing ? undefined : keyOf(event)
      if (key === undefined) return
      event.preventDefault()
      event.stopPropagation()
      doings[key]()
    }
    addEventListener('keydown', press, { capture: true })
    return () => removeEventListener('keydown', press, { capture: true })
  })

  return (
    <>
      <ViewingTools
        line={line}
        sheet={Math.min(sheet, sheets)}
        sheets={sheets}
        at={at + 1}
        of={lines.length}
        zoom={zoom}
        turn={turnOn}
        enlarge={enlarge}
      />
      {children}
      <AttachmentView
        line={line}
        page={sheet}
        zoom={zoom}
        place={frame}
        onPages={(count) => {
          setSheets(count)
          setSheet((now) => Math.min(now, count))
        }}
      />
    </>
  )
}
