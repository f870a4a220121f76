import Papa from 'papaparse'

/** The mark between the cells: a tab wherever there is one, for only commas and semicolons stand inside values. */
const markOf = (text: string): string => {
  const [first = ''] = text.trimStart().split(/\r?\n/, 1)
  if (text.includes('\t')) return '\t'
  return first.includes(';') ? ';' : ','
}

/** The rows and cells of a pasted text, set apart by tabs, semicolons or commas; rows without any word are left out. */
export const splitPasted = (text: string): string[][] => {
  const plain = text.replace(/^\ufeff/, '')
  const parse = (quoteChar: string) =>
    Papa.parse<string[]>(plain, { delimiter: markOf(plain), quoteChar, skipEmptyLines: 'greedy' })
  const quoted = parse('"')
  // A lone inch mark is no quotation: read without quotations, so that no row is swallowed.
  const { data } = quoted.errors.some(({ type }) => type === 'Quotes') ? parse('\u0000') : quoted
  return data.map((row) => row.map((cell) => cell.trim()))
}
