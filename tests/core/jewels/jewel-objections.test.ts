import { describe, expect, it } from 'vitest'
import { jewelObjections } from '../../../core/jewels/jewel-objections.ts'
import { tallyJewels } from '../../../core/jewels/jewel-tally.ts'
import type { CaliberValues, JewelGroup } from '../../../core/record/caliber.ts'

type Line = readonly [place: string, kind: string, count: number]
const against = (lines: readonly Line[], values: CaliberValues = {}): readonly string[] => {
  const groups: readonly JewelGroup[] = lines.map(([place, kind, count]) => ({ place, kind, count }))
  return jewelObjections(tallyJewels(groups), values).map(
    ({ code, place, wrong }) => `${code} ${place}${wrong ? ' (wrong)' : ''}`,
  )
}

describe('pivots', () => {
  it.each(['balance', 'pallet', 'escape', 'fifth', 'fourth', 'third', 'centre', 'sweep'])(
    'the %s has two, and one cap to each',
    (place) => {
      expect(against([[place, 'hole', 2]])).toEqual([])
      expect(against([[place, 'hole', 3]])).toEqual([`more-than-pivots ${place} (wrong)`])
      expect(
        against([
          [place, 'hole', 2],
          [place, 'cap', 3],
        ]),
      ).toEqual([`more-than-pivots ${place} (wrong)`])
    },
  )

  it('the barrel may have four, of arbor and of barrel; winding and other work any number', () => {
    expect(against([['barrel', 'hole', 4]])).toEqual([])
    expect(against([['barrel', 'hole', 5]])).toEqual(['more-than-pivots barrel (wrong)'])
    expect(
      against([
        ['winding', 'hole', 9],
        ['other', 'cap', 7],
      ]),
    ).toEqual([])
  })

  it('a cap jewel stands over a hole jewel', () => {
    expect(against([['escape', 'cap', 2]])).toEqual(['cap-without-hole escape'])
    expect(
      against([
        ['escape', 'hole', 2],
        ['escape', 'cap', 1],
      ]),
    ).toEqual([])
  })

  it('one alone is odd, but at centre, sweep and barrel', () => {
    for (const place of ['balance', 'pallet', 'escape', 'fifth', 'fourth', 'third'])
      expect(against([[place, 'hole', 1]])).toEqual([`odd-pivot ${place}`])
    for (const place of ['centre', 'sweep', 'barrel']) expect(against([[place, 'hole', 1]])).toEqual([])
  })

  it('one at each of several arbors is a train jewelled in the upper plate only, where none has two', () => {
    const upper = (['escape', 'fourth', 'third'] as const).map((place): Line => [place, 'hole', 1])
    expect(against([['balance', 'hole', 2], ...upper])).toEqual([])
    expect(against([['pallet', 'hole', 2], ...upper])).toEqual([
      'odd-pivot escape',
      'odd-pivot fourth',
      'odd-pivot third',
    ])
    expect(against([['balance', 'hole', 1], ...upper])).toContain('odd-pivot balance')
  })
})

describe('escapement', () => {
  const stones: readonly Line[] = [['pallet', 'pallet-stone', 2]]
  it.each([
    ['lever', []],
    ['other', []],
    [undefined, []],
    ['pin-lever', ['stones-without-lever pallet (wrong)']],
    ['cylinder', ['stones-without-lever pallet (wrong)']],
    ['verge', ['stones-without-lever pallet']],
    ['duplex', ['stones-without-lever pallet']],
    ['detent', ['stones-without-lever pallet']],
  ] as const)('pallet stones with %s: %o', (escapement, objections) => {
    expect(against(stones, escapement && { escapement })).toEqual(objections)
  })

  it.each([
    [1, ['stones-of-two pallet']],
    [2, []],
    [3, ['stones-of-two pallet (wrong)']],
  ] as const)('%i pallet stones of a lever: %o', (count, objections) => {
    expect(against([['pallet', 'pallet-stone', count]], { escapement: 'lever' })).toEqual(objections)
  })

  it.each([
    ['lever', []],
    ['pin-lever', []],
    ['detent', []],
    ['cylinder', ['pivots-without-pallets pallet (wrong)']],
    ['verge', ['pivots-without-pallets pallet (wrong)']],
    ['duplex', ['pivots-without-pallets pallet (wrong)']],
  ] as const)('jewelled pallet pivots with %s: %o', (escapement, objections) => {
    expect(against([['pallet', 'hole', 2]], { escapement })).toEqual(objections)
  })

  it.each([
    ['lever', 1, []],
    ['lever', 2, ['impulse-of-one balance']],
    ['detent', 2, []],
    ['pin-lever', 1, ['impulse-in-pin-lever balance']],
    ['cylinder', 1, ['impulse-without-pin balance (wrong)']],
    ['verge', 1, ['impulse-without-pin balance (wrong)']],
    ['duplex', 1, []],
  ] as const)('with %s, %i impulse jewels: %o', (escapement, count, objections) => {
    expect(against([['balance', 'impulse', count]], { escapement })).toEqual(objections)
  })
})

describe('arbors', () => {
  it.each([
    [{}, []],
    [{ secondsDisplay: 'centre-indirect' }, []],
    [{ secondsDisplay: 'centre-direct' }, ['no-sweep-arbor sweep']],
    [{ secondsDisplay: 'small' }, ['no-sweep-arbor sweep (wrong)']],
    [{ secondsDisplay: 'none' }, ['no-sweep-arbor sweep (wrong)']],
    [{ secondsDisplay: 'small', sweepPinion: 8 }, []],
  ] as const)('a sweep jewel with %o: %o', (values, objections) => {
    expect(against([['sweep', 'hole', 1]], values)).toEqual(objections)
  })

  it.each([
    [{}, []],
    [{ fourthWheel: 60 }, []],
    [{ escapePinion: 8 }, []],
    [{ fourthWheel: 60, escapePinion: 8 }, ['no-fifth-arbor fifth']],
    [{ fourthWheel: 60, escapePinion: 8, fifthWheel: 36 }, []],
    [{ fourthWheel: 60, escapePinion: 8, fifthPinion: 8 }, []],
  ] as const)('fifth jewels with %o: %o', (values, objections) => {
    expect(against([['fifth', 'hole', 2]], values)).toEqual(objections)
  })
})

describe('the total', () => {
  const nine: readonly Line[] = [
    ['balance', 'hole', 2],
    ['balance', 'cap', 2],
    ['balance', 'impulse', 1],
    ['pallet', 'pallet-stone', 2],
    ['escape', 'hole', 2],
  ]
  const unusual = ['unusual-for-total pallet', 'unusual-for-total escape']

  it('is judged of lever watches alone, by the word or by their pallet stones', () => {
    expect(against(nine, { escapement: 'lever' })).toEqual(unusual)
    expect(against(nine)).toEqual(unusual)
    expect(against(nine, { escapement: 'other' })).toEqual([])
    const withoutStones: readonly Line[] = [
      ['balance', 'hole', 2],
      ['balance', 'cap', 2],
      ['balance', 'impulse', 1],
      ['escape', 'hole', 2],
    ]
    expect(against(withoutStones)).toEqual([])
    expect(against(withoutStones, { escapement: 'lever' })).toHaveLength(2)
  })

  it('is judged only where the list comes to it, and nothing else is amiss', () => {
    expect(against(nine, { jewelsStated: 9 })).toEqual(unusual)
    expect(against(nine, { jewelsStated: 17 })).toEqual([])
    expect(against([...nine, ['third', 'hole', 1], ['third', 'cap', 1]])).toEqual(['odd-pivot third'])
  })

  it('takes stones of other work as coming on top', () => {
    expect(against([...nine.slice(0, 4), ['winding', 'hole', 4], ['other', 'hole', 2], ['barrel', 'hole', 2]])).toEqual(
      [],
    )
  })
})
