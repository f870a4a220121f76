import { notLetDownBefore } from '../record/let-down.ts'
import { stripOrder } from '../record/strip-order.ts'
import { defineProof } from './define-proof.ts'

/** What must come off before what can be put into one order, with the mainspring let down in time. */
export const stripOrderHasNoLoop = defineProof({
  id: 'strip-order-has-no-loop',
  title: 'Strip order has no loop',
  meaning:
    'The steps of taking down can be put into one order in which each part comes off after all that it waits for; where they wait for each other, the list cannot be followed.',
  needs: [],
  uses: [],
  lists: ['stripOrder'],
  tolerance: {
    allows: 'no loop; a part without its own step, a part with two, and a mainspring not let down are doubtful',
    why:
      'A loop cannot be followed at all. A part that is waited for and has no step, or has two, leaves the order open. ' +
      'Barrel, barrel bridge, ratchet wheel and click hold the wound spring, so letting it down must be said by then.',
  },
  source: 'common practice',
  validity: 'Any movement. The order shown is one of those possible; the maker’s own order comes first.',
  reasons: ['strip-sound', 'strip-loop', 'strip-not-let-down', 'strip-twice', 'strip-loose-end'],
  judge: (_values, { lists }) => {
    const steps = lists.stripOrder
    const { order, loop, looseEnds, twice } = stripOrder(steps)
    const verdict = { stated: steps.length, found: order.length, unit: 'steps', difference: null, allowed: null }
    if (loop.length > 0) {
      return {
        ...verdict,
        found: 0,
        outcome: 'disagrees',
        working: [{ formula: loop.join(' → '), where: {}, gives: 'a loop' }],
        reason: 'strip-loop',
        details: { parts: loop.length - 1, part: loop[0] ?? '', loop: loop.join(' → ') },
      }
    }
    const working = [
      { formula: order.map(({ part }) => part).join(' → '), where: {}, gives: `${order.length} steps in order` },
    ]
    const [looseEnd] = looseEnds
    const underPower = notLetDownBefore(order)
    if (underPower !== undefined) {
      const details = { part: underPower.part }
      return { ...verdict, outcome: 'doubtful', working, reason: 'strip-not-let-down', details }
    }
    if (twice[0] !== undefined) {
      return { ...verdict, outcome: 'doubtful', working, reason: 'strip-twice', details: { part: twice[0] } }
    }
    if (looseEnd !== undefined) {
      const details = { ...looseEnd, more: looseEnds.length - 1 }
      return { ...verdict, outcome: 'doubtful', working, reason: 'strip-loose-end', details }
    }
    const asListed = order.every((step, at) => step === steps[at])
    return {
      ...verdict,
      outcome: 'agrees',
      working,
      reason: 'strip-sound',
      details: { asListed: asListed ? 'yes' : 'no' },
    }
  },
})
