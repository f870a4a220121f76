import type { RefObject } from 'react'
import { PdfPage } from './pdf-page.tsx'
import { type AttachmentLine, useAttachmentFile } from './use-attachments.ts'

interface AttachmentViewProps {
  readonly line: AttachmentLine
  readonly page: number
  readonly zoom: number
  readonly onPages: (count: number) => void
  readonly place?: RefObject<HTMLElement | null>
}

/** What a picture or scan is called, with its page. */
export const attachmentLabel = ({ name, page }: AttachmentLine): string =>
  page === null ? name : `${name}, page ${page}`

/** A picture, or a page of a PDF, in a frame that scrolls. A picture is only ever an image: nothing in it can act. */
export const AttachmentView = ({ line, page, zoom, onPages, place }: AttachmentViewProps) => {
  const { file, failure } = useAttachmentFile(line.sha256)
  const label = attachmentLabel(line)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by key
    <section ref={place} className="scan-frame" tabIndex={0} aria-label={`${label}, scrolls by arrow keys`}>
      {failure === undefined ? null : <p className="problem">{failure}</p>}
      {file === undefined ? null : file.type === 'application/pdf' ? (
        <PdfPage file={file} page={page} zoom={zoom} label={`${label}, sheet ${page}`} onPages={onPages} />
      ) : (
        <img src={file.address} alt={label} style={{ width: `${zoom * 100}%` }} />
      )}
    </section>
  )
}
