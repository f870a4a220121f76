import type { Source } from '../../../core/exchange/library-file.ts'

/** A source as it stands in the form: text, empty where nothing is stated. */
export interface TypedSource {
  readonly title: string
  readonly author: string
  readonly year: string
  readonly edition: string
  readonly language: string
  readonly unitsAsPrinted: string
  readonly notes: string
}

export const typedSource = (source: Source | null): TypedSource => ({
  title: source?.title ?? '',
  author: source?.author ?? '',
  year: source?.year === undefined ? '' : String(source.year),
  edition: source?.edition ?? '',
  language: source?.language ?? '',
  unitsAsPrinted: source?.unitsAsPrinted ?? '',
  notes: source?.notes ?? '',
})

type Changed = { readonly source: Source } | { readonly problem: string; readonly field: keyof TypedSource | 'key' }

/** The source that was typed, with what only a newer version knows of it; or what is wrong, and in which field. */
export const changedSource = (
  before: Source | null,
  key: string,
  typed: TypedSource,
  taken: readonly string[],
): Changed => {
  const title = typed.title.trim()
  const year = typed.year.trim()
  if (title === '') return { problem: 'A source needs a title.', field: 'title' }
  if (year !== '' && !/^\d{4}$/.test(year))
    return { problem: `Year: “${year}” is not a year. Write four figures, as 1931, or leave it empty.`, field: 'year' }
  if (key === '') return { problem: 'A source needs a key, as manuel-1931.', field: 'key' }
  if (before === null && taken.includes(key))
    return { problem: `Another source has the key ${key}. Write another, as ${key}-2.`, field: 'key' }
  const { author: _a, year: _y, edition: _e, language: _l, unitsAsPrinted: _u, notes: _n, ...rest } = before ?? { key }
  const stated = Object.entries({
    author: typed.author,
    edition: typed.edition,
    language: typed.language,
    unitsAsPrinted: typed.unitsAsPrinted,
    notes: typed.notes,
  }).flatMap(([name, text]) => (text.trim() === '' ? [] : [[name, text.trim()] as const]))
  return {
    source: { ...rest, key, title, ...(year === '' ? {} : { year: Number(year) }), ...Object.fromEntries(stated) },
  }
}
