import { describe, expect, it } from 'vitest'
import { countedMotionWork } from '../../../core/bench/counted-motion-work.ts'
import { foreignPart, type Observed } from '../../../core/bench/foreign-part.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import {
  benchSentences,
  explanationSentences,
  motionWorkSentence,
  putBackSentence,
} from '../../../core/wording/foreign-part-sentence.ts'

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
/** With plain spaces, as a person reads it. */
const plain = (text: string | undefined) => (text ?? '').replaceAll('\u202f', ' ')
const told = (...of: Parameters<typeof find>) => benchSentences(find(...of)).map(plain)
const explained = (...of: Parameters<typeof find>) =>
  find(...of).explanations.map((one) => {
    const { says, remarks } = explanationSentences(one)
    return `${says}${remarks === '' ? '' : `: ${plain(remarks)}`}`
  })

describe('what explains it', () => {
  it('is said of a part that was not counted', () => {
    expect(explained({}, { beatRateVph: 18240 })[0]).toBe(
      'A third wheel of 76 instead of 75 would explain it: ' +
        'The seconds hand then goes round 60.8 times in an hour of the minute hand.',
    )
  })

  it('is said of a part that was counted so', () => {
    expect(explained({ fourthWheel: 81 })[0]).toBe(
      'The fourth wheel, counted at 81 instead of 80, explains it: ' + 'The seconds hand stays true with it.',
    )
  })

  it('says what stays open, and that a count is seldom cut', () => {
    const all = explained({}, { beatRateVph: 16020 })
    expect(all.find((one) => one.startsWith('An escape pinion of 9'))).toBe(
      'An escape pinion of 9 instead of 8 would explain it: ' +
        '20 vph (107.9 s a day) stay open, which the regulator may take up. Such a count is seldom cut. ' +
        'The seconds hand stays true with it.',
    )
  })

  it('calls the escape teeth a wheel, and is silent of a seconds hand that there is not', () => {
    const noHand: CaliberValues = { ...watch, secondsDisplay: 'none' }
    expect(explained({}, { beatRateVph: 19200 }, noHand)).toContain(
      'An escape wheel of 16 instead of 15 would explain it',
    )
  })
})

describe('a part put back', () => {
  it('takes the right article', () => {
    const { putBack, specifiedVph } = find({ escapePinion: 7 })
    expect(putBack.map((part) => putBackSentence(part, specifiedVph))[0]).toMatch(/^With an escape pinion of 8 again/)
  })

  it.each([
    [{ thirdWheel: 76 }, 'With a third wheel of 75 again the train gives 18 000, the specified rate.'],
    [
      { thirdWheel: 76, fourthWheel: 81 },
      'With a third wheel of 75 again the train gives 18 225, still 225 vph more than specified.',
    ],
    [
      { thirdWheel: 76, fourthWheel: 79 },
      'With a third wheel of 75 again the train gives 17 775, still 225 vph less than specified.',
    ],
  ])('says what the train then gives: %j', (counted, says) => {
    const { putBack, specifiedVph } = find(counted)
    expect(putBack.map((part) => plain(putBackSentence(part, specifiedVph)))[0]).toBe(says)
  })
})

describe('the train on the bench', () => {
  it('gives what is specified, or gives it in another way', () => {
    expect(told({ thirdWheel: 75 })).toEqual(['The train gives 18 000, as specified.'])
    expect(told({ fourthWheel: 70, escapePinion: 7 })).toEqual([
      'The train gives 18 000, as specified, although counts differ: fourth wheel 70 instead of 80 and escape pinion 7 instead of 8. Perhaps another execution of the caliber.',
    ])
  })

  it('is off, and what the hands then do', () => {
    expect(told({ thirdWheel: 76 })).toEqual([
      'The train on the bench gives 18 240, 240 vph more than the 18 000 specified (1152 s a day). With the balance at 18 000 the hands lose 1136.8 s a day.',
    ])
    expect(told({ thirdWheel: 74 })[0]).toContain('240 vph less than the 18 000 specified (1152 s a day)')
    expect(told({ thirdWheel: 74 })[0]).toContain('the hands gain 1167.6 s a day')
  })

  it('is off as specified already', () => {
    expect(told({ fourthWheel: 80 }, {}, { ...watch, thirdWheel: 57 })[0]).toMatch(
      /^The counts give 13 680, 4320 vph less than the 18 000 specified .*look at the proof of the beat rate first\.$/,
    )
  })

  it('gives no rate while counts are missing', () => {
    const { thirdWheel: _, escapePinion: __, ...gaps } = watch
    expect(told({}, {}, gaps)).toEqual([
      'The train gives no rate yet: third wheel and escape pinion are neither specified nor counted.',
    ])
    expect(told({ thirdWheel: 75 }, {}, gaps)[0]).toContain('escape pinion is neither specified nor counted')
  })

  it('says what was observed, and that regulation or no single part explains it', () => {
    expect(told({}, { beatRateVph: 18240 })[1]).toBe('What was observed needs a train of 18 240.')
    expect(told({}, { beatRateVph: 18020 })[1]).toMatch(/within what the regulator takes up/)
    expect(told({}, { beatRateVph: 72000 })[1]).toMatch(/No single wheel or pinion/)
    const { thirdWheel: _, ...gap } = watch
    expect(told({}, { beatRateVph: 18020 }, gap)).toHaveLength(1)
  })

  it('says how many parts the seconds hand speaks against', () => {
    const one = find({}, { beatRateVph: 18225, secondsHandTrue: true })
    expect(benchSentences(one).at(-1)).toBe(
      `${one.againstSecondsHand} ${one.againstSecondsHand === 1 ? 'part' : 'parts'} would explain the rate, but not what the seconds hand does.`,
    )
  })

  it('has only its own rate to tell where none is specified', () => {
    const { beatRateVph: _, ...noRate } = watch
    const { thirdWheel: __, ...gap } = noRate
    expect(told({ thirdWheel: 75 }, {}, gap)).toEqual(['The train gives 18 000, as specified.'])
  })
})

describe('the motion work', () => {
  const work: CaliberValues = { cannonPinion: 12, minuteWheel: 36, minutePinion: 10, hourWheel: 40 }
  const said = (counted = {}) => {
    const finding = countedMotionWork(work, counted)
    return finding && motionWorkSentence(finding)
  }
  it('keeps the hour hand true', () => {
    expect(said()).toBe('The hour hand keeps true: 36/12 × 40/10 = 12.')
    expect(said({ cannonPinion: 10, minutePinion: 12 })).toBe(
      'The hour hand keeps true, although counts differ (cannon pinion 10 instead of 12 and minute pinion 12 instead of 10): 36/10 × 40/12 = 12.',
    )
  })
  it('leads it astray, and what would make it true', () => {
    expect(said({ hourWheel: 38 })).toBe(
      'The hour hand strays: 36/12 × 38/10 = 11.4, where 12 are needed. The rate is not touched by it. An hour wheel of 40 again would make it true.',
    )
    expect(said({ hourWheel: 38, minuteWheel: 35 })).toBe(
      'The hour hand strays: 35/12 × 38/10 = 11 1/12, where 12 are needed. The rate is not touched by it.',
    )
  })
})
