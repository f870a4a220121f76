import { useQueryClient } from '@tanstack/react-query'
import { FileText } from 'lucide-react'
import { useEffect, useRef, useState } from 'react'
import { AddAttachment } from '../../components/attachments/add-attachment.tsx'
import { attachmentLabel } from '../../components/attachments/attachment-view.tsx'
import { removeWithWayBack } from '../../components/attachments/remove-attachment.ts'
import { type AttachmentLine, useAttachmentFile, useAttachments } from '../../components/attachments/use-attachments.ts'
import { Viewer, type ViewingKey } from '../../components/attachments/viewer.tsx'
import '../../components/attachments/attachments.css'
import './caliber-attachments.css'

const keys: Readonly<Record<string, ViewingKey>> = {
  PageDown: 'next',
  PageUp: 'previous',
  '+': 'larger',
  '=': 'larger',
  '-': 'smaller',
}
const keyOf = (event: KeyboardEvent): ViewingKey | undefined =>
  event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key]

const Picture = ({ sha256 }: { sha256: string }) => {
  const { file } = useAttachmentFile(sha256)
  return file === undefined ? null : <img src={file.address} alt="" />
}

/** The picture is read when it comes into sight; a PDF is told by its sign, and read when it is opened. */
const Thumbnail = ({ line, onOpen }: { line: AttachmentLine; onOpen: () => void }) => {
  const place = useRef<HTMLButtonElement>(null)
  const [seen, setSeen] = useState(false)
  useEffect(() => {
    if (place.current === null) return
    const watch = new IntersectionObserver(([entry]) => entry?.isIntersecting && setSeen(true))
    watch.observe(place.current)
    return () => watch.disconnect()
  }, [])
  return (
    <button ref={place} type="button" className="thumbnail" onClick={onOpen}>
      <span className="thumbnail-picture">
        {line.type === 'application/pdf' ? (
          <FileText aria-hidden="true" />
        ) : seen ? (
          <Picture sha256={line.sha256} />
        ) : null}
      </span>
      <span className="thumbnail-name">{attachmentLabel(line)}</span>
    </button>
  )
}

interface LargeProps {
  readonly lines: readonly AttachmentLine[]
  readonly line: AttachmentLine
  readonly onShow: (id: number) => void
  readonly onClose: () => void
}

const Large = ({ lines, line, onShow, onClose }: LargeProps) => {
  const queries = useQueryClient()
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    dialog.current?.showModal()
    // So that the arrow keys move the picture at once.
    dialog.current?.querySelector<HTMLElement>('.scan-frame')?.focus()
  }, [])
  return (
    <dialog ref={dialog} className="floating large-scan" aria-label={attachmentLabel(line)} onClose={onClose}>
      <Viewer lines={lines} line={line} onShow={onShow} keyOf={keyOf} />
      <form method="dialog" className="actions">
        <button type="submit" className="plain-button">
          Close <kbd>Esc</kbd>
        </button>
        <button
          type="button"
          className="plain-button"
          onClick={() => {
            dialog.current?.close()
            void removeWithWayBack(line, queries, 'Ctrl Z brings it back.')
          }}
        >
          Remove from this caliber
        </button>
      </form>
    </dialog>
  )
}

/** The pictures and scans of a caliber, small; each opens large. */
export const CaliberAttachments = ({ id }: { id: number }) => {
  const lines = useAttachments({ caliberId: id })
  const [large, setLarge] = useState<number | null>(null)
  const line = lines.find((one) => one.id === large)
  return (
    <section className="pictures" aria-labelledby="pictures">
      <h2 id="pictures">Pictures and scans</h2>
      {lines.length === 0 ? null : (
        <ul>
          {lines.map((one) => (
            <li key={one.id}>
              <Thumbnail line={one} onOpen={() => setLarge(one.id)} />
            </li>
          ))}
        </ul>
      )}
      <AddAttachment place={{ caliberId: id }} />
      {line === undefined ? null : <Large lines={lines} line={line} onShow={setLarge} onClose={() => setLarge(null)} />}
    </section>
  )
}
