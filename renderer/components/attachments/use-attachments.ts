import { useQuery } from '@tanstack/react-query'
import { useEffect, useState } from 'react'
import type { CallInput, CallOutput } from '../../../core/api/contract.ts'
import { call } from '../../api/hooks.ts'
import { failureText } from '../failure-text.ts'
import { type AttachmentFile, attachmentFile } from './attachment-file.ts'

export type AttachmentLine = CallOutput<'attachments.list'>['attachments'][number]

/** What stands at a caliber and at a source. */
export const useAttachments = (place: CallInput<'attachments.list'>): readonly AttachmentLine[] =>
  useQuery({
    queryKey: ['attachments.list', place.caliberId, place.source],
    queryFn: () => call('attachments.list', place),
  }).data?.attachments ?? none

const none: readonly AttachmentLine[] = []

/** The bytes of a picture or scan, once they are here, or why they are not. */
export const useAttachmentFile = (sha256: string): { file?: AttachmentFile; failure?: string } => {
  const [found, setFound] = useState<{ sha256: string; file?: AttachmentFile; failure?: string }>({ sha256 })
  useEffect(() => {
    let gone = false
    attachmentFile(sha256).then(
      (file) => gone || setFound({ sha256, file }),
      (error: unknown) => gone || setFound({ sha256, failure: failureText(error) }),
    )
    return () => {
      gone = true
    }
  }, [sha256])
  return found.sha256 === sha256 ? found : {}
}
