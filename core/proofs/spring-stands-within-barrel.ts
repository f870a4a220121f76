import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import { defineProof } from './define-proof.ts'
import { exactValue, sideOf } from './exact-value.ts'

const usualMm = 0.1
const closeMm = 0.03
const looseMm = 0.25

/** The spring stands below the lid, with a little play and not too much. */
export const springStandsWithinBarrel = defineProof({
  id: 'spring-stands-within-barrel',
  title: 'Spring stands within the barrel',
  meaning:
    'The strip stands a little lower than the free height of the barrel; higher it binds under the lid, much lower it is not the spring of this barrel.',
  needs: ['barrelDepthMm', 'springHeightMm'],
  uses: [],
  lists: [],
  tolerance: {
    allows: '0.03 to 0.25 mm of play between blade and lid',
    why:
      'About 0.1 mm is left under a flat lid and none need be where the lid is recessed, so little play is doubtful and not ' +
      'wrong. Much more wastes height and lets the coils slip over one another. A blade higher than the space jams. ' +
      'The outer limits are our choice.',
  },
  source: 'H. Jendritzki, Die Zugfeder, Schweizerische Uhrmacher-Zeitung 12/1950, section 1 (extract)',
  validity: 'Closed barrels, with the depth taken from the floor to the lid.',
  reasons: ['stands-free', 'stands-close', 'stands-loose', 'stands-proud'],
  judge: (values, { readings }) => {
    const { barrelDepthMm, springHeightMm } = values
    const clearance = plain(barrelDepthMm - springHeightMm)
    const exactly = () =>
      exactValue(readings, 'barrelDepthMm', barrelDepthMm).sub(exactValue(readings, 'springHeightMm', springHeightMm))
    const proud = sideOf(clearance, 0, exactly) < 0
    const close = sideOf(clearance, closeMm, exactly) < 0
    const loose = sideOf(clearance, looseMm, exactly) > 0
    return {
      outcome: proud ? 'disagrees' : close || loose ? 'doubtful' : 'agrees',
      stated: springHeightMm,
      found: barrelDepthMm,
      unit: 'mm',
      difference: clearance,
      allowed: looseMm,
      get working() {
        return [
          {
            formula: `${onPaper(barrelDepthMm)} − ${onPaper(springHeightMm)}`,
            where: { barrelDepthMm, springHeightMm },
            gives: clearance,
          },
        ]
      },
      reason: proud ? 'stands-proud' : close ? 'stands-close' : loose ? 'stands-loose' : 'stands-free',
      details: { usualMm },
    }
  },
})
