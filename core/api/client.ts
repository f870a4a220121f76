import { type CallInput, type CallName, type CallOutput, contract } from './contract.ts'
import type { Transport } from './dispatcher.ts'
import { LignebookError } from './errors.ts'

export type Client = <N extends CallName>(name: N, input: CallInput<N>) => Promise<CallOutput<N>>

/** A typed caller over any transport. Throws `LignebookError` where the answer is a failure. */
export const createClient =
  (transport: Transport): Client =>
  async (name, input) => {
    const answer = await transport(name, input)
    if (!answer.ok) throw new LignebookError(answer.failure.code, answer.failure.details)
    // Parsed by the dispatcher on the far side and again here, so that a host cannot hand the page anything else.
    return contract[name].output.parse(answer.value) as CallOutput<typeof name>
  }
