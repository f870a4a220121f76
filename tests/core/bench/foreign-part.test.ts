import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { foreignPart, type Observed } from '../../../core/bench/foreign-part.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'

const watch: CaliberValues = {
  beatRateVph: 18000,
  secondsDisplay: 'small',
  centreWheel: 80,
  thirdPinion: 10,
  thirdWheel: 75,
  fourthPinion: 10,
  fourthWheel: 80,
  escapePinion: 8,
  escapeTeeth: 15,
}
const find = (counted = {}, observed: Observed = {}, values: CaliberValues = watch) =>
  foreignPart({ values, readings: {} }, counted, observed)
const named = ({ explanations }: ReturnType<typeof find>) => explanations.map(({ field, there }) => `${field} ${there}`)

describe('counted teeth', () => {
  it('agree with the specification', () => {
    const finding = find({ thirdWheel: 75 })
    expect(finding).toMatchObject({ specifiedVph: 18000, different: [], putBack: [], explanations: [] })
    expect(finding.difference).toEqual({ vph: 0, secondsPerDay: 0, handsGain: 0 })
  })

  it('show the one that differs, what it does, and that putting it back restores the rate', () => {
    const finding = find({ thirdWheel: 76, fourthWheel: 80 })
    expect(finding.bench?.vph.toFraction()).toBe('18240')
    expect(finding.difference?.vph).toBe(240)
    expect(finding.difference?.secondsPerDay).toBe(1152)
    expect(finding.difference?.handsGain).toBeCloseTo(-1136.842, 3)
    expect(finding.different).toEqual([{ field: 'thirdWheel', specified: 75, there: 76 }])
    expect(finding.putBack).toMatchObject([{ field: 'thirdWheel', restores: true }])
    expect(finding.explanations).toHaveLength(1)
    expect(finding.explanations[0]).toMatchObject({
      field: 'thirdWheel',
      specified: 75,
      there: 76,
      counted: true,
      exact: true,
      restVph: 0,
      restSecondsPerDay: 0,
      customary: true,
      secondsTrue: false,
    })
    expect(finding.explanations[0]?.rate.secondsTurns?.toFraction()).toBe('304/5')
    expect(finding.explanations[0]?.rate.working.formula).toBe('80/10 × 76/10 × 80/8 × 2 × 15')
  })

  it('that make up for each other leave the rate as it is', () => {
    const finding = find({ fourthWheel: 70, escapePinion: 7 })
    expect(finding.difference?.vph).toBe(0)
    expect(finding.different).toHaveLength(2)
    expect(finding.putBack.map(({ restores }) => restores)).toEqual([false, false])
    expect(finding.explanations).toEqual([])
  })

  it('two of them that are wrong: neither alone restores the rate', () => {
    const finding = find({ thirdWheel: 76, fourthWheel: 81 })
    expect(finding.putBack.map(({ rate, restores }) => [rate.vph.toFraction(), restores])).toEqual([
      ['18225', false],
      ['18240', false],
    ])
    expect(finding.explanations).toEqual([])
  })

  it('fill what the specification leaves open, and what stays open is named', () => {
    const { thirdWheel: _, escapePinion: __, ...gaps } = watch
    const finding = find({ thirdWheel: 75 }, {}, gaps)
    expect(finding).toMatchObject({ bench: null, difference: null, missing: ['escapePinion'], different: [] })
    expect(find({ thirdWheel: 75, escapePinion: 8 }, {}, gaps)).toMatchObject({ missing: [], different: [] })
  })

  it('are held to what the specified counts give where no rate is specified', () => {
    const { beatRateVph: _, ...noRate } = watch
    expect(find({ thirdWheel: 76 }, {}, noRate)).toMatchObject({ specifiedVph: 18000, difference: { vph: 240 } })
    const { beatRateVph: __, escapeTeeth: ___, ...less } = watch
    expect(find({}, {}, less)).toMatchObject({ specifiedVph: null, bench: null, difference: null })
  })
})

describe('what was observed', () => {
  it('a rate at which the hands keep time is explained by the nearest wheel that gives it', () => {
    const finding = find({}, { beatRateVph: 18240 })
    expect(finding).toMatchObject({ observedTrainVph: 18240, withinRegulation: false })
    expect(named(finding)[0]).toBe('thirdWheel 76')
    expect(finding.explanations[0]).toMatchObject({ counted: false, exact: true })
    expect(finding.explanations[0]?.rate.working.gives).toBe(18240)
  })

  it('hands that lose while the balance keeps its rate are explained by the same wheel', () => {
    const finding = find({}, { handsGainSecondsPerDay: -1137 })
    expect(finding.observedTrainVph).toBeCloseTo(18240.03, 2)
    expect(named(finding)[0]).toBe('thirdWheel 76')
    expect(finding.explanations[0]?.exact).toBe(true)
    // Rate and hands together: the balance beats 18 240 and the hands keep time by a train cut for it.
    expect(find({}, { beatRateVph: 18240, handsGainSecondsPerDay: 0 }).observedTrainVph).toBe(18240)
  })

  it('a pinion with another customary count goes before one that is seldom cut', () => {
    const seven = find({}, { beatRateVph: 144000 / 7 })
    expect(seven.explanations[0]).toMatchObject({ field: 'escapePinion', there: 7, customary: true, exact: true })
    // A fourth pinion of 9 is the nearer, and seldom cut; both give the rate exactly.
    const nine = find({}, { beatRateVph: 20000 }, { ...watch, centreWheel: 72, thirdPinion: 9 })
    expect(nine.explanations.slice(0, 2)).toMatchObject([
      { field: 'centreWheel', there: 80, customary: true, exact: true },
      { field: 'fourthPinion', there: 9, customary: false, exact: true },
    ])
    const escapeAt = (vph: number) =>
      find({}, { beatRateVph: vph }).explanations.find((one) => one.field === 'escapeTeeth')
    expect(escapeAt(19200)).toMatchObject({ there: 16, customary: true })
    expect(escapeAt(22800)).toMatchObject({ there: 19, customary: false })
  })

  it('within what the regulator takes up no part is accused', () => {
    const finding = find({}, { handsGainSecondsPerDay: 200 })
    expect(finding).toMatchObject({ withinRegulation: true, explanations: [] })
    // 0.3 % of the rate that the train would have to have is the edge.
    expect(find({}, { beatRateVph: 18054 }).withinRegulation).toBe(true)
    expect(find({}, { beatRateVph: 18055 }).withinRegulation).toBe(false)
  })

  it('a counted part that explains it goes before any guess', () => {
    const finding = find({ fourthWheel: 81 }, { beatRateVph: 18225 })
    expect(finding.explanations[0]).toMatchObject({ field: 'fourthWheel', there: 81, counted: true })
    expect(finding.withinRegulation).toBe(true)
  })

  it('parts that were counted as specified are not guessed at', () => {
    const finding = find({ thirdWheel: 75 }, { beatRateVph: 18240 })
    expect(named(finding)).not.toContain('thirdWheel 76')
    expect(finding.explanations.every(({ counted }) => !counted)).toBe(true)
  })

  it('the seconds hand is a second witness', () => {
    const seen = { beatRateVph: 18225 }
    expect(find({}, seen).explanations.find(({ field }) => field === 'fourthWheel')).toMatchObject({
      there: 81,
      secondsTrue: true,
    })
    const kept = find({}, { ...seen, secondsHandTrue: true })
    expect(kept.explanations.every(({ secondsTrue }) => secondsTrue === true)).toBe(true)
    expect(kept.againstSecondsHand).toBeGreaterThan(0)
    const strayed = find({}, { ...seen, secondsHandTrue: false })
    expect(named(strayed)).not.toContain('fourthWheel 81')
    const noHand: CaliberValues = { ...watch, secondsDisplay: 'none' }
    expect(find({}, { ...seen, secondsHandTrue: true }, noHand)).toMatchObject({ againstSecondsHand: 0 })
  })

  it('a rate far from every neighbour is explained by none', () => {
    expect(find({}, { beatRateVph: 72000 })).toMatchObject({ withinRegulation: false, explanations: [] })
  })

  it('nothing observed and nothing counted gives nothing to explain', () => {
    expect(find()).toMatchObject({ observedTrainVph: null, withinRegulation: false, explanations: [] })
    expect(find({}, { secondsHandTrue: false })).toMatchObject({ observedTrainVph: null, explanations: [] })
  })

  it('hands that would stand still are refused', () => {
    expect(() => find({}, { handsGainSecondsPerDay: -86400 })).toThrow(
      expect.objectContaining({ code: 'not-positive' }),
    )
  })

  it('finds any wheel of a neighbouring count again from the rate that it gives', () => {
    const wheels = fc.constantFrom('centreWheel', 'thirdWheel', 'fourthWheel')
    const teeth = fc.integer({ min: -8, max: 8 }).filter((more) => more !== 0)
    fc.assert(
      fc.property(wheels, teeth, (field, more) => {
        const there = (watch[field] ?? 0) + more
        const rate = find({ [field]: there }).bench?.vph.valueOf() ?? 0
        const all = find({}, { beatRateVph: rate }).explanations
        expect(all.find((one) => one.field === field && one.there === there)?.exact).toBe(true)
        for (const one of all) expect(Math.abs(one.rate.vph.valueOf() - rate)).toBeLessThanOrEqual(rate * 0.003)
      }),
    )
  })
})
