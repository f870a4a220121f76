import { jewelFieldKeys, jewelObjections } from '../jewels/jewel-objections.ts'
import { tallyJewels } from '../jewels/jewel-tally.ts'
import { defineProof } from './define-proof.ts'
import type { WorkingStep } from './proof.ts'

/** The jewels sit where such a movement has pivots, pallets and an impulse pin, in pairs and in the customary order. */
export const jewelsSitInPairs = defineProof({
  id: 'jewels-sit-in-pairs',
  title: 'Jewels sit in pairs',
  meaning:
    'Jewels are listed where the movement has a place for them, two to an arbor, and as is customary for their number; where they are not, a place is misnamed or the escapement is another.',
  needs: [],
  uses: jewelFieldKeys,
  lists: ['jewels'],
  appliesTo: ({ jewelsStated }) => jewelsStated !== 0,
  tolerance: {
    allows:
      'one hole jewel at centre, sweep or barrel, one at each arbor of a train jewelled in the upper plate only, and whatever is ' +
      'customary for the total',
    why:
      'An arbor has two pivots and a lever two pallet stones, so more is wrong, and so is a stone that belongs to another ' +
      'escapement or to a seconds hand that is not there. Everything else has been made: a total alone never fixes the ' +
      'places, so what is unusual is doubtful and never wrong.',
  },
  source:
    'the customary order up to 17 after Wikibooks and an encyclopaedia’s “Jewel bearing” (read in excerpt); 16 and from 18 on ' +
    'common practice, from memory; ISO 1112 for which jewels count (its scope alone was read)',
  validity:
    'Functional jewels, which alone are counted (ISO 1112): stones that bear a pivot or its end, or take and give impulse. ' +
    'The customary order is that of lever watches from 7 to 21 jewels; stones of barrel, sweep, winding, fifth arbor and ' +
    'other work come on top of it.',
  reasons: ['jewels-paired', 'jewels-misplaced', 'jewels-unusual'],
  judge: (values, { lists }) => {
    const tally = tallyJewels(lists.jewels)
    const objections = jewelObjections(tally, values)
    let formula = ''
    for (const place of Object.keys(tally.places))
      formula += `${formula === '' ? '' : ' + '}${tally.places[place]} ${place}`
    const working: WorkingStep[] = [{ formula, where: tally.places, gives: tally.total }]
    let wrong = false
    for (const objection of objections) {
      const { code, place, kind, count, expected } = objection
      wrong ||= objection.wrong
      working.push({
        formula: `${place}${kind === 'any' ? '' : `, ${kind.replace('-', ' ')}`}: ${count} − ${expected}`,
        where: { objection: code, place, kind, count, expected },
        gives: count - expected,
      })
    }
    return {
      outcome: wrong ? 'disagrees' : objections.length > 0 ? 'doubtful' : 'agrees',
      stated: values.jewelsStated ?? null,
      found: tally.total,
      unit: 'jewels',
      difference: null,
      allowed: null,
      working,
      reason: wrong ? 'jewels-misplaced' : objections.length > 0 ? 'jewels-unusual' : 'jewels-paired',
    }
  },
})
