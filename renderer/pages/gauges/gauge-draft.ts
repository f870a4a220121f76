import { z } from 'zod'
import { gaugePlaces } from '../../../core/springs/gauge-table.ts'
import { gaugeUnits, type TypedGauge } from './typed-gauge.ts'

const nameOf = (id: number | null): string => `lignebook.gauge.${id ?? 'new'}`
const draftSchema = z.object({
  name: z.string(),
  measures: z.enum(['thickness', 'height']),
  place: z.enum([...gaugePlaces, '']),
  source: z.string(),
  page: z.string(),
  unit: z.enum(gaugeUnits),
  cells: z.array(z.object({ number: z.string(), size: z.string() })).min(1),
})

/** What was typed of a gauge table and not saved, kept in this window so that leaving or a reload loses nothing. */
export const gaugeDraft = {
  read: (id: number | null): TypedGauge | null => {
    try {
      const parsed = draftSchema.safeParse(JSON.parse(sessionStorage.getItem(nameOf(id)) ?? 'null'))
      return parsed.success ? parsed.data : null
    } catch {
      return null
    }
  },
  write: (id: number | null, typed: TypedGauge): void => {
    try {
      sessionStorage.setItem(nameOf(id), JSON.stringify(typed))
    } catch {
      // A full store leaves the form as it is, unkept.
    }
  },
  clear: (id: number | null): void => sessionStorage.removeItem(nameOf(id)),
}
