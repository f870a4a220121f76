import { bestSpringLength, mostTurns, springCoils, springFill } from '../formulas/barrel.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import { barrelSizeKeys, coilSpace } from '../springs/barrel-sizes.ts'
import { bestFill, fillAllowance, fillVerdict } from '../springs/fill-verdict.ts'
import { defineProof } from './define-proof.ts'
import type { WorkingStep } from './proof.ts'

/** The spring is about as long as gives the most turns in its barrel. */
export const springLengthFollowsBarrel = defineProof({
  id: 'spring-length-follows-barrel',
  title: 'Spring length follows the barrel',
  meaning:
    'The spring is about as long as gives the most turns at its thickness in its barrel; longer or shorter it turns fewer times, so that length, thickness or barrel is not as stated.',
  needs: barrelSizeKeys,
  uses: ['springEnd', 'bridleThicknessMm'],
  lists: [],
  tolerance: {
    allows: 'a fifth of the best length either way; a third (34 %) is doubtful',
    why:
      'Turns hardly change near the best length: a tenth too long or too short costs 0.8 % of them and a fifth 3.1 %, so ' +
      'that a length printed to the nearest 5 or 10 mm never matters and a spring from stock may lie anywhere there. ' +
      'A third costs more than 8 %, which a maker does not give away. These are the limits of the room that the spring ' +
      'takes, so that the two proofs stand and fall together: that one judges the room, this one says how many ' +
      'millimetres and turns it means. The limits are our choice.',
  },
  source:
    'W. L. Goodrich, The Modern Clock, 1905, pp. 280–281, for the one length that gives the most turns; figures and limits are derived here',
  validity:
    'Flat springs in round barrels, turns by the ring model. A slipping bridle whose thickness is stated is taken off the barrel twice.',
  reasons: ['length-best', 'length-short', 'length-long', 'length-over'],
  judge: (values) => {
    const { barrelArborMm, springThicknessMm, springLengthMm } = values
    const barrelInsideMm = coilSpace(values, values.barrelInsideMm)
    const sizes = { barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm }
    const fill = springFill(sizes)
    const best = bestSpringLength(sizes)
    const most = mostTurns(sizes)
    const outcome = fillVerdict(fill)
    const difference = best - springLengthMm
    const turns = fill < 1 ? springCoils(sizes).turns : null
    const lostTurns = turns === null ? most : Math.max(0, most - turns)
    // The strip area is what counts, so the thickness that suits the stated length is had from the same rule.
    const suitingThicknessMm = (springThicknessMm * bestFill) / fill
    const extent = outcome === 'agrees' ? 'length-best' : difference > 0 ? 'length-short' : 'length-long'
    return {
      outcome,
      stated: springLengthMm,
      found: best,
      unit: 'mm',
      difference,
      allowed: (best * fillAllowance.usual) / bestFill,
      get working() {
        const squares = `π × (${onPaper(barrelInsideMm)}² − ${onPaper(barrelArborMm)}²)`
        const bridle = barrelInsideMm === values.barrelInsideMm ? {} : { insideWithinBridleMm: plain(barrelInsideMm) }
        const working: WorkingStep[] = [
          {
            formula: `${squares} ÷ (8 × ${onPaper(springThicknessMm)})`,
            where: { barrelInsideMm: values.barrelInsideMm, barrelArborMm, springThicknessMm, ...bridle },
            gives: best,
          },
          {
            formula: `${onPaper(best, 3)} − ${onPaper(springLengthMm)}`,
            where: { springLengthMm },
            gives: difference,
          },
        ]
        if (turns !== null)
          working.push({
            formula: `${onPaper(most, 3)} − ${onPaper(turns, 3)}`,
            where: { mostTurns: most, turns },
            gives: lostTurns,
          })
        if (outcome !== 'agrees')
          working.push({
            formula: `${squares} ÷ (8 × ${onPaper(springLengthMm)})`,
            where: { springLengthMm, suits: 'springThicknessMm' },
            gives: suitingThicknessMm,
          })
        return working
      },
      reason: turns === null ? 'length-over' : extent,
      details: { mostTurns: most, lostTurns, lostPercent: (lostTurns / most) * 100, suitingThicknessMm },
    }
  },
})
