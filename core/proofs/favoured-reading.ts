import type { CaliberFieldKey } from '../fields/caliber-fields.ts'
import type { Caliber } from '../record/caliber.ts'
import { chooseReading } from '../record/choose-reading.ts'
import type { Reading } from '../record/reading.ts'
import { proveCaliber } from './prove.ts'

/** How much the proofs hold against a caliber: one thing wrong weighs more than anything doubtful. */
const objections = (caliber: Caliber): number => {
  let sum = 0
  for (const { judgement } of proveCaliber(caliber)) {
    if (judgement.outcome === 'disagrees' || judgement.outcome === 'outside-range') sum += 1000
    else if (judgement.outcome === 'doubtful') sum += 1
  }
  return sum
}

/** The reading of a field with which the proofs find least wrong; null where they do not decide between the best two. */
export const favouredReading = (caliber: Caliber, key: CaliberFieldKey): Reading | null => {
  const readings: readonly Reading[] = caliber.readings[key] ?? []
  const tried = readings
    .map((reading) => ({ reading, against: objections(chooseReading(caliber, key, reading)) }))
    .sort((a, b) => a.against - b.against)
  const [best] = tried
  // Readings of the same value are one answer.
  const next = tried.find(({ reading }) => reading.value !== best?.reading.value)
  return best && next && best.against < next.against ? best.reading : null
}
