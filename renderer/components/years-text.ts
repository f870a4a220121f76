/** Years made, as the trade writes them: 1926–38, from 1926, to 1938; null where neither is known. */
export const yearsText = (first: number | null | undefined, last: number | null | undefined): string | null => {
  if (first == null) return last == null ? null : `to ${last}`
  if (last == null) return `from ${first}`
  if (first === last) return String(first)
  const sameCentury = Math.floor(first / 100) === Math.floor(last / 100)
  return `${first}–${sameCentury ? String(last % 100).padStart(2, '0') : last}`
}
