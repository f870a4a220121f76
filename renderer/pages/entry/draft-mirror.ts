import { z } from 'zod'
import { type CaliberEntry, caliberEntrySchema } from '../../../core/exchange/library-file.ts'
import type { SourceInHand } from './entry-state.ts'

const nameOf = (caliberId: number | null): string => `lignebook.draft.${caliberId ?? 'new'}`
const inHandName = 'lignebook.source-in-hand'
const inHandSchema = z.object({ source: z.string(), page: z.string() })

const read = <T>(name: string, schema: z.ZodType<T>): T | null => {
  try {
    const parsed = schema.safeParse(JSON.parse(sessionStorage.getItem(name) ?? 'null'))
    return parsed.success ? parsed.data : null
  } catch {
    return null
  }
}

/** What was typed and is not yet in the library's draft, kept in the window so that a reload loses no key stroke. */
export const draftMirror = {
  read: (caliberId: number | null): CaliberEntry | null => read(nameOf(caliberId), caliberEntrySchema),
  write: (caliberId: number | null, entry: CaliberEntry): void => {
    try {
      sessionStorage.setItem(nameOf(caliberId), JSON.stringify(entry))
    } catch {
      // A full store only means that the library's own draft is the one that counts.
    }
  },
  clear: (caliberId: number | null): void => sessionStorage.removeItem(nameOf(caliberId)),
}

/** The source in hand, which stays from one caliber to the next. */
export const rememberedInHand = (): SourceInHand => read(inHandName, inHandSchema) ?? { source: '', page: '' }
export const rememberInHand = (inHand: SourceInHand): void => sessionStorage.setItem(inHandName, JSON.stringify(inHand))
