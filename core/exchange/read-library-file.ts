import { LignebookError } from '../api/errors.ts'
import { type FileFault, wordFileFault } from '../wording/file-fault.ts'
import { jsonFaultOffset } from './json-fault.ts'
import { type LibraryFile, libraryFileSchema } from './library-file.ts'
import { repeatedKey } from './repeated-key.ts'

interface Issue {
  readonly code?: string | undefined
  readonly message?: string
  readonly path: readonly PropertyKey[]
  readonly expected?: unknown
  readonly values?: readonly unknown[]
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

const faultOf = ({ code, message, expected, values = [] }: Issue, found: unknown): FileFault => {
  if (found === undefined) return { code: 'missing' }
  if (code === 'invalid_format' || code === 'too_small') return { code: 'blank' }
  if (code === 'invalid_value') return { code: 'not-one-of', choices: values.map(String) }
  // A rule that is no matter of form names the fault it finds.
  if (code === 'custom') return { code: message === 'chosen-twice' ? message : 'overruled-twice' }
  return { code: 'wrong-kind', expected: typeof expected === 'string' ? expected : '' }
}

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
  const repeated = repeatedKey(json)
  if (repeated) throw refuse(placeOf(repeated), { code: 'twice' })
  const parsed = libraryFileSchema.safeParse(document)
  if (parsed.success) return parsed.data
  const issue: Issue = parsed.error.issues[0] ?? { path: [] }
  throw refuse(placeOf(issue.path), faultOf(issue, valueAt(document, issue.path)))
}
