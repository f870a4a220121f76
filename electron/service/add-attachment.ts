import type { CallOutput, ParsedInput } from '../../core/api/contract.ts'
import { LignebookError } from '../../core/api/errors.ts'
import { addAttachment } from '../store/attachments.ts'
import type { Library } from '../store/library.ts'
import { soundAttachment } from './sound-attachment.ts'

/** The name alone, as it is shown and as a download is called: no folder, nothing that cannot be seen. */
const plainName = (name: string): string =>
  (name.split(/[\\/]/).at(-1) ?? '').replace(/\p{C}/gu, '').trim().slice(0, 200) || 'scan'

/**
 * Takes a file as a picture or scan of a caliber or source.
 * @throws LignebookError attachment-refused with the reason; not-found where there is no such caliber or source
 */
export const addFile = async (
  library: Library,
  { name: given, data, place }: ParsedInput<'attachment.add'>,
): Promise<CallOutput<'attachment.add'>> => {
  const name = plainName(given)
  const sound = soundAttachment(name, data)
  if (!sound.ok) throw new LignebookError('attachment-refused', { name, fault: sound.fault })
  const { useId, kept } = await addAttachment(library, sound.attachment, place)
  return { useId, sha256: sound.attachment.sha256, kept }
}
