import { useDeferredValue, useMemo } from 'react'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../../../core/fields/caliber-fields.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { proofReports } from '../../../core/wording/proof-report.ts'
import { useFamily } from '../../api/use-family.ts'
import { chosenReading } from './chosen-reading.ts'
import { foundProblems } from './entry-problems.ts'
import { proofMarks } from './proof-marks.ts'

/** The entry as it is read and proved while it is typed, over its bases; what lags behind the typing is a key stroke at most. */
export const useProvedEntry = (caliberId: number | null, entry: CaliberEntry) => {
  const proved = useDeferredValue(entry)
  const read = useMemo(() => readEntry(proved), [proved])
  const family = useFamily(caliberId, read.caliber)
  const reports = useMemo(() => proofReports(family), [family])
  const marks = useMemo(() => proofMarks(reports), [reports])
  const problems = useMemo(() => foundProblems(read.problems), [read])
  const withoutSource = useMemo(
    () =>
      (Object.keys(entry.fields) as CaliberFieldKey[]).filter((key) => {
        const reading = chosenReading(entry.fields[key])
        return Object.hasOwn(caliberFields, key) && reading?.source === undefined && (reading?.printed ?? '') !== ''
      }),
    [entry.fields],
  )
  return { proved, family, reports, marks, problems, withoutSource }
}
