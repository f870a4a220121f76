import type { LibraryFile } from '../../core/exchange/library-file.ts'
import { type Library, rows, run, write } from './library.ts'

/** What an imported file holds that this version has no page for. */
export interface KeptSections {
  readonly movements: LibraryFile['movements']
  /** Top-level keys that this version does not know, as they stood. */
  readonly others: Readonly<Record<string, unknown>>
}

const merged = ['movements']

/** Everything kept from imported files, to be written out again. */
export const readKeptSections = async (library: Library): Promise<KeptSections> => {
  const all = stored(library)
  const { movements = [], ...others } = all
  return { movements: movements as KeptSections['movements'], others }
}

/** Keeps movements beside those already kept, each once; another section takes the place of its namesake. */
export const keepSections = async (library: Library, { movements, others }: KeptSections): Promise<void> =>
  write(library, () => {
    const all = stored(library)
    for (const [name, content] of Object.entries({ ...others, movements })) {
      const kept = merged.includes(name) ? eachOnce([...lines(all[name]), ...lines(content)]) : content
      if (merged.includes(name) && lines(kept).length === 0) continue
      run(library, library.db.replaceInto('kept_section').values({ name, content: JSON.stringify(kept) }))
    }
  })

const stored = (library: Library): Record<string, unknown> =>
  Object.fromEntries(
    rows(library, library.db.selectFrom('kept_section').selectAll()).map(({ name, content }) => [
      name,
      JSON.parse(content) as unknown,
    ]),
  )

const lines = (content: unknown): unknown[] => (Array.isArray(content) ? content : [])

const eachOnce = (all: readonly unknown[]): unknown[] => [
  ...new Map(all.map((line) => [JSON.stringify(line), line])).values(),
]
