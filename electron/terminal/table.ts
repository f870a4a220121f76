/** Sets rows in columns for a person: numbers to the right, the rest to the left. */
export const table = (rows: readonly (readonly string[])[]): string => {
  const columns = Math.max(0, ...rows.map((row) => row.length))
  const widths = Array.from({ length: columns }, (_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)))
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
