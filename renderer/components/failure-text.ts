import { LignebookError } from '../../core/api/errors.ts'
import { wordFailure } from '../../core/wording/failure.ts'

/** What went wrong, in a sentence. */
export const failureText = (error: unknown): string =>
  error instanceof LignebookError ? wordFailure(error.failure) : wordFailure({ code: 'internal', details: {} })
