import { ChevronLeft, ChevronRight, Download, ZoomIn, ZoomOut } from 'lucide-react'
import { failureText } from '../failure-text.ts'
import { say } from '../say.ts'
import { saveAttachment } from './attachment-file.ts'
import { attachmentLabel } from './attachment-view.tsx'
import type { AttachmentLine } from './use-attachments.ts'

interface ViewingToolsProps {
  readonly line: AttachmentLine
  readonly sheet: number
  readonly sheets: number
  /** Which of how many files, from 1. */
  readonly at: number
  readonly of: number
  readonly zoom: number
  readonly turn: (by: 1 | -1) => void
  readonly enlarge: (by: 1 | -1) => void
}

/** What is shown, and the buttons that turn, enlarge and save it. */
export const ViewingTools = ({ line, sheet, sheets, at, of, zoom, turn, enlarge }: ViewingToolsProps) => {
  const first = at === 1 && sheet <= 1
  const last = at === of && sheet >= sheets
  return (
    <div className="scan-tools">
      <p className="scan-name">
        {attachmentLabel(line)}
        <span className="quiet">
          {sheets > 1 ? ` · sheet ${sheet} of ${sheets}` : ''}
          {of > 1 ? ` · file ${at} of ${of}` : ''}
        </span>
      </p>
      <button type="button" className="text-button" aria-label="Previous" disabled={first} onClick={() => turn(-1)}>
        <ChevronLeft aria-hidden="true" />
      </button>
      <button type="button" className="text-button" aria-label="Next" disabled={last} onClick={() => turn(1)}>
        <ChevronRight aria-hidden="true" />
      </button>
      <button
        type="button"
        className="text-button"
        aria-label="Smaller"
        disabled={zoom <= 1}
        onClick={() => enlarge(-1)}
      >
        <ZoomOut aria-hidden="true" />
      </button>
      <button type="button" className="text-button" aria-label="Larger" onClick={() => enlarge(1)}>
        <ZoomIn aria-hidden="true" />
      </button>
      <button
        type="button"
        className="text-button"
        aria-label={`Save ${line.name} to a file`}
        onClick={() => saveAttachment(line.sha256).catch((error: unknown) => say(failureText(error)))}
      >
        <Download aria-hidden="true" />
      </button>
    </div>
  )
}
