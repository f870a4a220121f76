import type { ImportCounts } from '../api/contract.ts'

const calibers = (n: number): string => (n === 1 ? '1 caliber' : `${n} calibers`)

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
  if (counts.refused.length > 0) {
    lines.push(`${calibers(counts.refused.length)} ${would}left out whole, for these reasons:`)
    for (const { path, reason } of counts.refused) lines.push(`  ${path}: ${reason}`)
  }
  if (counts.kept.length > 0) {
    lines.push(`Kept for export, though this version has no page for it: ${counts.kept.join(', ')}.`)
  }
  return lines.length > 0 ? lines : ['The file holds no calibers.']
}
