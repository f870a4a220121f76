import { type CallOutput, contract } from '../../core/api/contract.ts'
import { LignebookError } from '../../core/api/errors.ts'
import { transport } from './transport.ts'

type Springs = CallOutput<'springs.all'>

/** Springs parsed at once; between two stretches the page hears its keys. */
const springsAtOnce = 4_000

const breath = (): Promise<void> => new Promise((done) => setTimeout(done))

/**
 * The whole tray, parsed as every answer is, but stretch by stretch: fifty thousand springs at once would keep the page from
 * its keys for some hundred milliseconds.
 */
export const allSprings = async (): Promise<Springs> => {
  const answer = await transport('springs.all', {})
  if (!answer.ok) throw new LignebookError(answer.failure.code, answer.failure.details)
  const { output } = contract['springs.all']
  const { springs } = answer.value as { readonly springs: readonly unknown[] }
  const parsed: Springs['springs'] = []
  for (let at = 0; at < springs.length; at += springsAtOnce) {
    if (at > 0) await breath()
    for (const spring of output.parse({ springs: springs.slice(at, at + springsAtOnce) }).springs) parsed.push(spring)
  }
  return { springs: parsed }
}
