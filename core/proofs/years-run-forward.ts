import { defineProof } from './define-proof.ts'
import { printedSpan } from './exact-value.ts'

/** The caliber was first made in a year no later than the last. */
export const yearsRunForward = defineProof({
  id: 'years-run-forward',
  title: 'Years run forward',
  meaning:
    'A caliber is first made before it is made last; where the years stand the other way round, two digits or the two fields have changed places.',
  needs: ['firstYear', 'lastYear'],
  uses: [],
  lists: [],
  tolerance: {
    allows: 'nothing; five years for each year marked as uncertain (c. 1926), which is then doubtful',
    why:
      'A year is printed whole, and a caliber may be made in one year only. A year with circa before it is dated by ' +
      'style or by number, which is commonly good to about five years.',
  },
  source: 'common practice',
  validity: 'Any caliber with both years.',
  reasons: ['years-forward', 'years-uncertain', 'years-backward'],
  judge: (values, { readings }) => {
    const { firstYear, lastYear } = values
    const allowed = printedSpan(readings, 'firstYear').below + printedSpan(readings, 'lastYear').above
    const years = lastYear - firstYear
    const forward = years >= 0
    const uncertain = !forward && -years <= allowed
    return {
      outcome: forward ? 'agrees' : uncertain ? 'doubtful' : 'disagrees',
      stated: firstYear,
      found: lastYear,
      unit: 'years',
      difference: years,
      allowed: forward ? null : allowed,
      working: [{ formula: `${lastYear} − ${firstYear}`, where: { lastYear, firstYear }, gives: years }],
      reason: forward ? 'years-forward' : uncertain ? 'years-uncertain' : 'years-backward',
    }
  },
})
