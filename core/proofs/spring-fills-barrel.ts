import { springFill } from '../formulas/barrel.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import { barrelSizeKeys, coilSpace } from '../springs/barrel-sizes.ts'
import { bestFill, fillAllowance, fillVerdict } from '../springs/fill-verdict.ts'
import { defineProof } from './define-proof.ts'

/** The spring takes about half of the free space in its barrel. */
export const springFillsBarrel = defineProof({
  id: 'spring-fills-barrel',
  title: 'Spring fills the barrel',
  meaning:
    'The strip takes about half of the room between wall and arbor; with much more or less of it the spring turns fewer times, and beyond all of it does not go in.',
  needs: barrelSizeKeys,
  uses: ['springEnd', 'bridleThicknessMm'],
  lists: [],
  tolerance: {
    allows: 'a fill of 0.40 to 0.60 of the free space; 0.33 to 0.67 is doubtful',
    why:
      'Half the free space gives the most turns. Between 0.40 and 0.60 at most 3.1 % of the turns is lost, and stock ' +
      'springs lie there; beyond 0.33 to 0.67 more than 8 % is lost, which a maker does not give away. The limits are our choice.',
  },
  source:
    'W. L. Goodrich, The Modern Clock, 1905, pp. 280–281, for the rule of half the space; the limits are derived here',
  validity: 'Flat springs in round barrels. A slipping bridle whose thickness is stated is taken off the barrel twice.',
  reasons: ['fill-usual', 'fill-low', 'fill-high', 'fill-over'],
  judge: (values) => {
    const { barrelArborMm, springThicknessMm, springLengthMm } = values
    const barrelInsideMm = coilSpace(values, values.barrelInsideMm)
    const found = springFill({ barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm })
    const outcome = fillVerdict(found)
    const extent = outcome === 'agrees' ? 'fill-usual' : found < bestFill ? 'fill-low' : 'fill-high'
    return {
      outcome,
      stated: null,
      found,
      unit: 'of the free space',
      difference: found - bestFill,
      allowed: fillAllowance.usual,
      get working() {
        return [
          {
            formula: `4 × ${onPaper(springLengthMm)} × ${onPaper(springThicknessMm)} ÷ (π × (${onPaper(barrelInsideMm)}² − ${onPaper(barrelArborMm)}²))`,
            where: {
              springLengthMm,
              springThicknessMm,
              barrelInsideMm: values.barrelInsideMm,
              barrelArborMm,
              ...(barrelInsideMm === values.barrelInsideMm ? {} : { insideWithinBridleMm: plain(barrelInsideMm) }),
            },
            gives: found,
          },
        ]
      },
      reason: found >= 1 ? 'fill-over' : extent,
    }
  },
})
