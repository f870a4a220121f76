import { z } from 'zod'

/** A failure that crosses as data. `core/wording/failure.ts` makes the sentence. */
export const failureSchema = z.strictObject({
  code: z.enum([
    'bad-input',
    'forbidden',
    'not-found',
    'unknown-call',
    'unreadable-values',
    'same-name',
    'draft-not-saved',
    'source-in-use',
    'same-ref',
    'same-gauge',
    'not-so-many',
    'nothing-to-book',
    'later-changes',
    'already-taken-back',
    'file-not-readable',
    'attachment-refused',
    'library-open-elsewhere',
    'library-from-newer-version',
    'library-not-one',
    'library-empty-file',
    'library-damaged',
    'library-not-openable',
    'disk-full',
    'library-busy',
    'internal',
  ]),
  details: z.record(z.string(), z.union([z.string(), z.number(), z.array(z.string())])).default({}),
})
export type Failure = z.infer<typeof failureSchema>

export type Answer = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly failure: Failure }

/** The one error type that our own code throws on purpose; every host turns it into an answer. */
export class LignebookError extends Error {
  readonly failure: Failure
  constructor(code: Failure['code'], details: Failure['details'] = {}) {
    super(code)
    this.name = 'LignebookError'
    this.failure = { code, details }
  }
}
