import { useQueryClient } from '@tanstack/react-query'
import { useEffect, useState } from 'react'
import type { Source } from '../../../core/exchange/library-file.ts'
import { AddAttachment } from '../../components/attachments/add-attachment.tsx'
import type { AttachmentPlace } from '../../components/attachments/add-files.ts'
import { orderAttachments, pdfPageOf, showsPageInHand } from '../../components/attachments/order-attachments.ts'
import { removeWithWayBack } from '../../components/attachments/remove-attachment.ts'
import { useAttachments } from '../../components/attachments/use-attachments.ts'
import { Viewer, type ViewingKey } from '../../components/attachments/viewer.tsx'
import type { SourceInHand } from './entry-state.ts'
import '../../components/attachments/attachments.css'
import './attachment-panel.css'

const shownName = 'lignebook.scans-beside-form'

const arrows: Readonly<Record<string, ViewingKey>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
}

/** Beside the form every key is held with Alt, so that typing goes on in the field. */
const keyOf = ({ altKey, shiftKey, ctrlKey, metaKey, key, code }: KeyboardEvent): ViewingKey | undefined => {
  if (!altKey || ctrlKey || metaKey || document.querySelector('dialog[open], [role="dialog"]')) return undefined
  if (shiftKey && arrows[key] !== undefined) return arrows[key]
  if (code === 'Period') return 'next'
  if (code === 'Comma') return 'previous'
  if (key === '+' || code === 'Equal' || code === 'NumpadAdd') return 'larger'
  if (key === '-' || code === 'Minus' || code === 'NumpadSubtract') return 'smaller'
  return undefined
}

const isToggle = ({ altKey, ctrlKey, metaKey, code }: KeyboardEvent): boolean =>
  altKey && !ctrlKey && !metaKey && code === 'KeyV'

interface AttachmentPanelProps {
  readonly caliberId: number | null
  readonly inHand: SourceInHand
  readonly sources: readonly Source[]
}

/** Scans and pictures beside the form while a caliber is typed: those of the page in hand first. */
export const AttachmentPanel = ({ caliberId, inHand, sources }: AttachmentPanelProps) => {
  const source = sources.find(({ key }) => key === inHand.source)
  const queries = useQueryClient()
  const found = useAttachments({
    ...(caliberId === null ? {} : { caliberId }),
    ...(inHand.source === '' ? {} : { source: inHand.source }),
  })
  const lines = orderAttachments(found, inHand)
  const [shown, setShown] = useState(() => sessionStorage.getItem(shownName) === 'yes')
  const [chosen, setChosen] = useState<number | null>(null)
  const [toSource, setToSource] = useState(true)
  const toggle = () => {
    sessionStorage.setItem(shownName, shown ? 'no' : 'yes')
    setShown(!shown)
  }
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!isToggle(event)) return
      event.preventDefault()
      event.stopPropagation()
      toggle()
    }
    addEventListener('keydown', press, { capture: true })
    return () => removeEventListener('keydown', press, { capture: true })
  })
  // Another page in hand is looked at as soon as there is a scan of it.
  const atPage = showsPageInHand(lines[0], inHand) ? lines[0]?.id : undefined
  // biome-ignore lint/correctness/useExhaustiveDependencies: turned by the page in hand, not only by what is found there
  useEffect(() => {
    if (atPage !== undefined) setChosen(null)
  }, [atPage, inHand.source, inHand.page])

  const line = lines.find(({ id }) => id === chosen) ?? lines[0]
  const title = source === undefined ? '' : source.title || source.key
  const ofSource: AttachmentPlace | null =
    source === undefined ? null : { source: source.key, ...(inHand.page.trim() ? { page: inHand.page.trim() } : {}) }
  const ofCaliber: AttachmentPlace | null = caliberId === null ? null : { caliberId }
  const place = toSource ? (ofSource ?? ofCaliber) : (ofCaliber ?? ofSource)

  if (!shown)
    return (
      <p className="scans-away">
        <button type="button" className="text-button" aria-keyshortcuts="Alt+V" onClick={toggle}>
          Show scans beside the form{lines.length > 0 ? ` (${lines.length})` : ''} <kbd>Alt V</kbd>
        </button>
      </p>
    )
  return (
    <section className="scans" aria-label="Scans and pictures">
      <div className="scans-head">
        <h2>Scans and pictures</h2>
        <button type="button" className="text-button" aria-keyshortcuts="Alt+V" onClick={toggle}>
          Hide <kbd>Alt V</kbd>
        </button>
      </div>
      {line === undefined ? (
        <p className="quiet">
          {inHand.source === '' && caliberId === null
            ? 'None to show. Choose a source above: its scans stand here, those of the page in hand first.'
            : 'None yet.'}
        </p>
      ) : (
        <Viewer lines={lines} line={line} firstSheet={pdfPageOf(line, inHand)} onShow={setChosen} keyOf={keyOf} />
      )}
      <AddAttachment place={place} onAdded={setChosen}>
        {ofSource !== null && ofCaliber !== null ? (
          <label>
            Add to{' '}
            <select
              value={toSource ? 'source' : 'caliber'}
              onChange={({ target }) => setToSource(target.value === 'source')}
            >
              <option value="source">
                {title}
                {inHand.page.trim() ? `, page ${inHand.page.trim()}` : ''}
              </option>
              <option value="caliber">this caliber</option>
            </select>
          </label>
        ) : null}
        {ofCaliber === null ? (
          <p className="quiet">
            {ofSource === null
              ? 'A new caliber takes pictures once it is saved. Choose a source to add scans of its pages now.'
              : `Goes to ${title}${inHand.page.trim() ? `, page ${inHand.page.trim()}` : ''}. The new caliber itself takes pictures once it is saved.`}
          </p>
        ) : null}
      </AddAttachment>
      {line === undefined ? null : (
        <p className="scans-foot quiet">
          <kbd>Alt .</kbd> <kbd>Alt ,</kbd> turn, <kbd>Alt +</kbd> <kbd>Alt −</kbd> size, <kbd>Alt Shift ↓</kbd> moves{' '}
          <button
            type="button"
            className="text-button"
            onClick={() => void removeWithWayBack(line, queries, 'Ctrl Z brings it back once the form is left.')}
          >
            Remove from {line.source === null ? 'this caliber' : 'this source'}
          </button>
        </p>
      )}
    </section>
  )
}
