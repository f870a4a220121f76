import Papa from 'papaparse'

const marks = ['\t', ';', ',', '|'] as const
const lookedAt = 60

const parse = (text: string, delimiter: string, quoteChar = '"'): Papa.ParseResult<string[]> =>
  Papa.parse<string[]>(text, { delimiter, quoteChar })

/** How well a mark sets the cells apart: how many rows have the most usual number of cells, times that number less one. */
const evenness = (rows: readonly (readonly string[])[]): number => {
  const counts = new Map<number, number>()
  for (const row of rows) if (row.length > 1) counts.set(row.length, (counts.get(row.length) ?? 0) + 1)
  return Math.max(0, ...[...counts].map(([cells, times]) => times * times * Math.min(cells - 1, 3)))
}

/**
 * The rows and cells of a list: set apart by tabs, semicolons, commas or strokes, whichever does it most evenly, with titles
 * above or not. Blank rows stay, so that rows are counted as a spreadsheet counts them.
 */
export const splitList = (text: string): string[][] => {
  const plain = text
    .replace(/^\ufeff/, '')
    .replace(/\r\n?/g, '\n')
    .trimEnd()
  const head = plain.split('\n', lookedAt).join('\n')
  const scored = marks.map((mark) => [mark, evenness(parse(head, mark).data)] as const)
  const [mark] = scored.reduce((best, next) => (next[1] > best[1] ? next : best))
  const quoted = parse(plain, mark)
  // A lone inch mark is no quotation: read without quotations, so that no row is swallowed.
  return quoted.errors.some(({ type }) => type === 'Quotes') ? parse(plain, mark, '\u0000').data : quoted.data
}

/** The text of a file: UTF-8 or UTF-16 by its first bytes, or else as older spreadsheets write it. */
export const textOfList = (bytes: ArrayBuffer): string => {
  const [first, second] = new Uint8Array(bytes, 0, Math.min(2, bytes.byteLength))
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return new TextDecoder('windows-1252').decode(bytes)
  }
}
