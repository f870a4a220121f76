import type { Source } from '../../core/exchange/library-file.ts'
import type { Reading } from '../../core/record/reading.ts'

/** Where a value comes from, at a glance; the handbook in full on hover and to a reader of the page. */
export const SourceMark = ({
  reading,
  sources,
}: {
  reading: Pick<Reading, 'source' | 'page' | 'note'>
  sources: readonly Source[]
}) => {
  if (reading.source === undefined) return <span className="source-mark none">own entry</span>
  const source = sources.find(({ key }) => key === reading.source)
  const full = [
    source?.author,
    source?.title ?? reading.source,
    source?.year,
    reading.page && `page ${reading.page}`,
    reading.note,
  ]
    .filter(Boolean)
    .join(', ')
  return (
    <details className="source-mark">
      <summary title={full}>
        {reading.source}
        {reading.page && ` p. ${reading.page}`}
      </summary>
      <span className="source-full">{full}</span>
    </details>
  )
}
