import { useQueryClient } from '@tanstack/react-query'
import { Paperclip } from 'lucide-react'
import { type ReactNode, useEffect, useRef, useState } from 'react'
import { attachmentLimits } from '../../../core/record/attachment-kind.ts'
import { type AttachmentPlace, addFiles, filesOf } from './add-files.ts'

interface AddAttachmentProps {
  /** Where files go; null where there is no place yet, and then `children` say so. */
  readonly place: AttachmentPlace | null
  readonly onAdded?: (useId: number) => void
  readonly children?: ReactNode
}

/** Takes pictures and scans: chosen, dropped anywhere on the page, or pasted. */
export const AddAttachment = ({ place, onAdded, children }: AddAttachmentProps) => {
  const queries = useQueryClient()
  const picker = useRef<HTMLInputElement>(null)
  const [said, setSaid] = useState<readonly string[]>([])
  const [over, setOver] = useState(false)

  const take = async (files: readonly File[]) => {
    if (files.length === 0) return
    if (place === null) return setSaid(['There is no place for it yet.'])
    setSaid(['Adding…'])
    const { said: outcome, lastUse } = await addFiles(files, place)
    await queries.invalidateQueries()
    setSaid(outcome)
    if (lastUse !== null) onAdded?.(lastUse)
  }
  const latest = useRef(take)
  latest.current = take
  useEffect(() => {
    const drop = (event: DragEvent) => {
      setOver(false)
      if (!event.dataTransfer?.types.includes('Files')) return
      // Unhandled, a dropped file would be opened in place of the page.
      event.preventDefault()
      void latest.current(filesOf(event.dataTransfer))
    }
    const drag = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return
      event.preventDefault()
      setOver(true)
    }
    const leave = (event: DragEvent) => event.relatedTarget === null && setOver(false)
    const paste = (event: ClipboardEvent) => {
      const files = filesOf(event.clipboardData)
      if (files.length === 0) return
      event.preventDefault()
      void latest.current(files)
    }
    addEventListener('drop', drop)
    addEventListener('dragover', drag)
    addEventListener('dragleave', leave)
    addEventListener('paste', paste)
    return () => {
      removeEventListener('drop', drop)
      removeEventListener('dragover', drag)
      removeEventListener('dragleave', leave)
      removeEventListener('paste', paste)
    }
  }, [])

  return (
    <div className="scan-add" data-over={over || undefined}>
      {children}
      {place === null ? null : (
        <>
          <button type="button" className="text-button" onClick={() => picker.current?.click()}>
            <Paperclip aria-hidden="true" />
            Add a picture or scan
          </button>
          <input
            ref={picker}
            type="file"
            className="out-of-sight"
            aria-label="Picture or scan"
            tabIndex={-1}
            multiple
            accept=".png,.jpg,.jpeg,.pdf"
            onChange={({ target }) => {
              void take([...(target.files ?? [])])
              target.value = ''
            }}
          />
          <p className="quiet">
            Or drop or paste it. PNG, JPEG or PDF, at most {attachmentLimits.bytes / 1_000_000} MB each and{' '}
            {'caliberId' in place
              ? `${attachmentLimits.perCaliber} a caliber`
              : `${attachmentLimits.perSource} a source`}
            .
          </p>
        </>
      )}
      <div role="status" className="scan-said">
        {said.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </div>
  )
}
