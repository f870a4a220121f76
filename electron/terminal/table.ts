/** Sets rows in columns for a person: numbers to the right, the rest to the left. */
export const table = (rows: readonly (readonly string[])[]): string => {
  const widths: number[] = []
  for (const row of rows) row.forEach((cell, i) => widths.splice(i, 1, Math.max(widths[i] ?? 0, cell.length)))
  const isNumber = (cell: string) => /^[−-]?[\d\u2009.]+( h| mm)?$/.test(cell)
  return rows
    .map((row) =>
      row
        .map((cell, i) => (isNumber(cell) ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}
