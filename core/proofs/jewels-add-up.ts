import { defineProof } from './define-proof.ts'

/** The jewels listed by place come to the stated total. */
export const jewelsAddUp = defineProof({
  id: 'jewels-add-up',
  title: 'Jewels add up',
  meaning:
    'The jewels listed by place come to the total that is stated; where they do not, a place is left out or counted twice.',
  needs: ['jewelsStated'],
  uses: [],
  lists: ['jewels'],
  tolerance: {
    allows: 'nothing',
    why: 'Jewels are counted; a list that falls short of the stated total leaves a place out.',
  },
  source: 'common practice',
  validity: 'Movements whose jewels are listed by place in full.',
  reasons: ['jewels-agree', 'jewels-short', 'jewels-over'],
  judge: (values, { lists }) => {
    const stated = values.jewelsStated
    let found = 0
    let formula = ''
    const where: Record<string, number> = {}
    for (const { place, kind, count } of lists.jewels) {
      found += count
      formula += formula === '' ? `${count}` : ` + ${count}`
      const name = `${place} ${kind}`
      where[name] = (where[name] ?? 0) + count
    }
    const agrees = found === stated
    return {
      outcome: agrees ? 'agrees' : 'disagrees',
      stated,
      found,
      unit: 'jewels',
      difference: found - stated,
      allowed: 0,
      working: [{ formula, where, gives: found }],
      reason: agrees ? 'jewels-agree' : found < stated ? 'jewels-short' : 'jewels-over',
    }
  },
})
