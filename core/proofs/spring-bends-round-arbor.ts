import { arborToThickness, surfaceStrain } from '../formulas/spring-bend.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import { defineProof } from './define-proof.ts'
import { exactValue, sideOf } from './exact-value.ts'

const leastBorne = 15
const least = 20
const most = 50
const usualFrom = 25
const usualTo = 32

/** The hub is as many times thicker than the spring as the inner coil can bear to be bent. */
export const springBendsRoundArbor = defineProof({
  id: 'spring-bends-round-arbor',
  title: 'Spring bends round the arbor',
  meaning:
    'The hub of the barrel arbor is at least some twenty times as thick as the spring; on a thinner hub the inner coil is strained until it sets or breaks.',
  needs: ['barrelArborMm', 'springThicknessMm'],
  uses: [],
  lists: [],
  tolerance: {
    allows: 'a hub of 20 to 50 thicknesses of the spring; 15 to 20 and above 50 are doubtful',
    why:
      'Watch practice is 25 to 32. A straight strip bent round a hub of 20 thicknesses would be strained by 4.8 % at its ' +
      'surface, several times the elastic limit of about 1 %, which only a formed inner coil bears; below 15 lies outside ' +
      'what springs are made for in general. A large hub harms no spring but takes its room, and above 50 a size is ' +
      'probably misread: a hub of a third of the barrel would then hold a strip of a hundred and fiftieth of it. ' +
      '20, 15 and 50 are our choice.',
  },
  source:
    'common practice; 25 to 32 from memory after C.-A. Reymondin et al., The Theory of Horology (not checked); 15 to 25 and ' +
    'more from notes on power springs in industrial handbooks (second-hand); the strain is derived here',
  validity: 'Flat springs on a round hub, measured where the spring winds and not at the pivots.',
  reasons: ['bend-usual', 'bend-sharp', 'bend-wide'],
  judge: ({ barrelArborMm, springThicknessMm }, { readings }) => {
    const found = arborToThickness(barrelArborMm, springThicknessMm)
    const exactly = () =>
      exactValue(readings, 'barrelArborMm', barrelArborMm).div(
        exactValue(readings, 'springThicknessMm', springThicknessMm),
      )
    const sharp = sideOf(found, least, exactly) < 0
    const wide = sideOf(found, most, exactly) > 0
    const broken = sharp && sideOf(found, leastBorne, exactly) < 0
    const strainPercent = plain(surfaceStrain(barrelArborMm, springThicknessMm) * 100)
    return {
      outcome: broken ? 'disagrees' : sharp || wide ? 'doubtful' : 'agrees',
      stated: null,
      found,
      unit: 'thicknesses',
      difference: sharp ? plain(found - least) : wide ? plain(found - most) : 0,
      allowed: 0,
      get working() {
        return [
          {
            formula: `${onPaper(barrelArborMm)} ÷ ${onPaper(springThicknessMm)}`,
            where: { barrelArborMm, springThicknessMm },
            gives: found,
          },
          {
            formula: `100 × ${onPaper(springThicknessMm)} ÷ (${onPaper(barrelArborMm)} + ${onPaper(springThicknessMm)})`,
            where: { barrelArborMm, springThicknessMm, unit: '%' },
            gives: strainPercent,
          },
        ]
      },
      reason: sharp ? 'bend-sharp' : wide ? 'bend-wide' : 'bend-usual',
      details: { strainPercent, usualFrom, usualTo, least },
    }
  },
})
