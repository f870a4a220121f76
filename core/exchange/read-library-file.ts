import { LignebookError } from '../api/errors.ts'
import { type FileFault, wordFileFault } from '../wording/file-fault.ts'
import { jsonFaultOffset } from './json-fault.ts'
import { type LibraryFile, libraryFileSchema } from './library-file.ts'

interface Issue {
  readonly code?: string | undefined
  readonly path: readonly PropertyKey[]
  readonly expected?: unknown
  readonly input?: unknown
  readonly errors?: readonly (readonly Issue[])[]
}

/** A place in the document as a person would write it: `calibers[3].fields.springThicknessMm`. */
const placeOf = (path: readonly PropertyKey[]): string =>
  path
    .map((step, index) => (typeof step === 'number' ? `[${step}]` : `${index > 0 ? '.' : ''}${String(step)}`))
    .join('')

const valueAt = (document: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    document,
  )

/**
 * Reads a library file.
 * @throws LignebookError 'file-not-readable' with the file's name, the place in the document and what is wrong there
 */
export const readLibraryFile = (text: string, name: string): LibraryFile => {
  const refuse = (where: string, fault: FileFault): LignebookError =>
    new LignebookError('file-not-readable', { file: name, where, what: wordFileFault(fault) })
  // A byte order mark is no part of the text.
  const json = text.replace(/^\ufeff/, '')
  if (json.trim() === '') throw refuse('', { code: 'empty-file' })
  let document: unknown
  try {
    document = JSON.parse(json)
  } catch {
    const before = json.slice(0, jsonFaultOffset(json)).split('\n')
    throw refuse(`line ${before.length}, position ${(before.at(-1)?.length ?? 0) + 1}`, { code: 'not-json' })
  }
  const version = valueAt(document, ['lignebook'])
  if (typeof version === 'number' && version > 1) throw refuse('lignebook', { code: 'newer-version', version })
  if (version !== 1) throw refuse('lignebook', { code: 'not-a-library' })
  const parsed = libraryFileSchema.safeParse(document)
  if (parsed.success) return parsed.data
  const issue: Issue = parsed.error.issues[0] ?? { path: [] }
  const missing = valueAt(document, issue.path) === undefined
  throw refuse(
    placeOf(issue.path),
    missing
      ? { code: 'missing' }
      : { code: 'wrong-kind', expected: typeof issue.expected === 'string' ? issue.expected : '' },
  )
}
