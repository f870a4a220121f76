import type { QueryClient } from '@tanstack/react-query'
import { call } from '../../api/hooks.ts'
import { failureText } from '../failure-text.ts'
import { say } from '../say.ts'
import type { AttachmentLine } from './use-attachments.ts'

/** Takes a picture or scan away from where it stands, and says how it comes back. */
export const removeWithWayBack = async (
  { id, name }: AttachmentLine,
  queries: QueryClient,
  wayBack: string,
): Promise<void> => {
  try {
    await call('attachment.remove', { useId: id })
    await queries.invalidateQueries()
    say(`Removed ${name}. ${wayBack}`)
  } catch (error) {
    say(failureText(error))
  }
}
