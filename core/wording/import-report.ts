import type { ImportCounts } from '../api/contract.ts'

const calibers = (n: number): string => (n === 1 ? '1 caliber' : `${n} calibers`)
const pictures = (n: number): string => (n === 1 ? '1 picture or scan' : `${n} pictures and scans`)

const gaugeTables = (n: number): string => (n === 1 ? '1 gauge table' : `${n} gauge tables`)

/**
 * Says what an import did, one line a fact; with `dryRun`, what it would do.
 * @example
 * wordImport({ added: 2, updated: 0, unchanged: 1, refused: [], kept: [] }, false) // ['2 calibers added.', '1 caliber unchanged.']
 */
export const wordImport = (counts: ImportCounts, dryRun: boolean): readonly string[] => {
  const lines: string[] = []
  const would = dryRun ? 'would be ' : ''
  if (counts.added > 0) lines.push(`${calibers(counts.added)} ${would}added.`)
  if (counts.updated > 0) lines.push(`${calibers(counts.updated)} ${would}updated.`)
  if (counts.unchanged > 0) lines.push(`${calibers(counts.unchanged)} unchanged.`)
  if (counts.attachments) lines.push(`${pictures(counts.attachments)} ${would}added.`)
  if (counts.gauges?.added) lines.push(`${gaugeTables(counts.gauges.added)} ${would}added.`)
  if (counts.gauges?.updated) lines.push(`${gaugeTables(counts.gauges.updated)} ${would}updated.`)
  const refused = Object.groupBy(counts.refused, ({ path }) =>
    path.startsWith('attachments[') ? 'pictures' : path.startsWith('gauges[') ? 'gauges' : 'whole',
  )
  for (const [left, count] of [
    [refused.whole ?? [], calibers],
    [refused.gauges ?? [], gaugeTables],
    [refused.pictures ?? [], pictures],
  ] as const) {
    if (left.length === 0) continue
    lines.push(`${count(left.length)} ${would}left out${count === pictures ? '' : ' whole'}, for these reasons:`)
    for (const { path, reason } of left) lines.push(`  ${path}: ${reason}`)
  }
  if (counts.kept.length > 0) {
    lines.push(`Kept for export, though this version has no page for it: ${counts.kept.join(', ')}.`)
  }
  return lines.length > 0 ? lines : ['The file holds no calibers.']
}
