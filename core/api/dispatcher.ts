import { type CallName, contract, type Handlers } from './contract.ts'
import { type Answer, type Failure, LignebookError } from './errors.ts'

/** How a page or terminal reaches the handlers: a call's name and a plain value, answered by a plain value. */
export type Transport = (name: string, input: unknown) => Promise<Answer>

const fail = (code: Failure['code'], details: Failure['details'] = {}): Answer => ({
  ok: false,
  failure: { code, details },
})

/** True for the name of a call that changes the library. */
export const writes = (name: string): boolean =>
  Object.hasOwn(contract, name) && contract[name as CallName].access === 'write'

/**
 * Parses the input at the door, runs the handler and parses what it answers.
 * Never rejects: an unforeseen error is handed to `report` and crosses as `internal`, without its text.
 */
export const createDispatcher =
  (handlers: Handlers, report: (name: string, error: unknown) => void): Transport =>
  async (name, input) => {
    if (!Object.hasOwn(contract, name)) return fail('unknown-call', { name })
    const call = contract[name as CallName]
    const parsed = call.input.safeParse(input)
    if (!parsed.success) {
      const issue = parsed.error.issues[0]
      return fail('bad-input', { call: name, where: issue?.path.join('.') ?? '', what: issue?.message ?? '' })
    }
    try {
      // The table pairs each handler with its input; indexing by a string loses that pairing.
      const handler = handlers[name as CallName] as (input: unknown) => unknown
      return { ok: true, value: call.output.parse(await handler(parsed.data)) }
    } catch (error) {
      if (error instanceof LignebookError) return { ok: false, failure: error.failure }
      report(name, error)
      return fail('internal', { call: name })
    }
  }
