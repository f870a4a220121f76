import type { CallInput } from '../../../core/api/contract.ts'
import { attachmentKind } from '../../../core/record/attachment-kind.ts'
import { wordAttachmentFault } from '../../../core/wording/attachment-fault.ts'
import { call } from '../../api/hooks.ts'
import { failureText } from '../failure-text.ts'

export type AttachmentPlace = CallInput<'attachment.add'>['place']

const base64Of = (file: File): Promise<string> =>
  new Promise((done, fail) => {
    const reader = new FileReader()
    reader.onload = () => done(String(reader.result).replace(/^[^,]*,/, ''))
    reader.onerror = () => fail(reader.error)
    reader.readAsDataURL(file)
  })

/** Adds files at a place and says of each what became of it. What is no picture or scan is refused before it is sent. */
export const addFiles = async (
  files: readonly File[],
  place: AttachmentPlace,
): Promise<{ readonly said: readonly string[]; readonly lastUse: number | null }> => {
  const said: string[] = []
  let lastUse: number | null = null
  for (const file of files) {
    const kind = attachmentKind(new Uint8Array(await file.arrayBuffer()))
    if (!kind.ok) {
      said.push(wordAttachmentFault(file.name, kind.fault))
      continue
    }
    try {
      const { useId, kept } = await call('attachment.add', { name: file.name, data: await base64Of(file), place })
      said.push(kept === 'now' ? `Added ${file.name}.` : `Added ${file.name}; its bytes were in the library already.`)
      lastUse = useId
    } catch (error) {
      said.push(failureText(error))
    }
  }
  return { said, lastUse }
}

/** The files of a drop or a paste; a pasted picture is named for what it is. */
export const filesOf = (data: DataTransfer | null): readonly File[] =>
  [...(data?.files ?? [])].map((file) =>
    file.name === 'image.png' ? new File([file], 'pasted picture.png', { type: file.type }) : file,
  )
