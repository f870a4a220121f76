import { caliberFields } from '../../core/fields/caliber-fields.ts'
import { OutsideRange } from '../../core/formulas/outside-range.ts'
import { readRatio } from '../../core/quantities/read-plain.ts'
import { lostSpring as estimate } from '../../core/springs/lost-spring.ts'
import { springLine } from '../../core/springs/spring-line.ts'
import { figure } from '../../core/wording/figure.ts'
import { lostSpringCaution, lostSpringRemark } from '../../core/wording/lost-spring-remark.ts'
import { oneSentence } from '../../core/wording/one-sentence.ts'
import { outsideRangeSentence } from '../../core/wording/outside-range.ts'
import { wordProblem } from '../../core/wording/quantity-problem.ts'
import { springCautions } from '../../core/wording/spring-cautions.ts'
import { calibersOf, type NamedCaliber } from './calibers-of.ts'
import { type Command, type CommandInput, libraryOption, printJson, UnusableInput } from './command.ts'

const turnsOf = ({ options: { turns } }: CommandInput): number | undefined => {
  if (turns === undefined) return undefined
  const read = readRatio(String(turns))
  if (!read.ok && read.problem.code === 'ambiguous') throw new UnusableInput(wordProblem('--turns', read.problem))
  const number = read.ok ? read.quantity.value : Number.NaN
  if (!(number > 0 && number <= 100))
    throw new UnusableInput(`--turns ${turns}: give the turns as a number above 0 and up to 100.`)
  return number
}

const nameOf = ({ maker, designation }: NamedCaliber) => `${maker} ${designation}`.trim()

const estimateOf = (one: NamedCaliber, turns: number | undefined) => {
  try {
    return estimate(one.caliber.values, turns)
  } catch (error) {
    if (!(error instanceof OutsideRange)) throw error
    const field = Object.keys(error.details).find((key) => Object.hasOwn(caliberFields, key))
    const sentence = oneSentence(outsideRangeSentence(error.code, error.details))
    throw new UnusableInput(`${one.where}${field ? `.fields.${field}` : ''}: ${sentence}`)
  }
}

export const lostSpring: Command = {
  usage: 'lost-spring FILE.json [--turns N] | lost-spring [--library FILE.sqlite] --caliber NAME [--turns N]',
  does: 'Estimates a lost spring from the barrel and the stated going hours; status 1 where a barrel is not stated.',
  options: { ...libraryOption, caliber: { type: 'string' }, turns: { type: 'string' } },
  run: async (input) => {
    const turns = turnsOf(input)
    const calibers = await calibersOf(input)
    const estimates = calibers.flatMap((one) => {
      const found = estimateOf(one, turns)
      return found === null ? [] : [{ one, found }]
    })
    if (input.options.json)
      printJson(input.io, {
        estimates: estimates.map(
          ({ one: { maker, designation }, found: { thinner, thicker, remarks, ...figures } }) => ({
            maker,
            designation,
            ...figures,
            thinner,
            thicker,
            remarks: remarks.map(lostSpringRemark),
          }),
        ),
      })
    else {
      for (const { one, found } of estimates) {
        const { heightMm, thicknessMm, lengthMm, turns: given } = found
        const line = springLine({ heightMm: heightMm ?? undefined, thicknessMm, lengthMm }, 'height-thickness-length')
        input.io.out(`${nameOf(one)}\n  about ${line} mm, ${figure(given, 2)} theoretical turns\n`)
        for (const remark of found.remarks) input.io.out(`  ${lostSpringRemark(remark)}\n`)
        input.io.out('\n')
      }
      for (const one of calibers.filter((each) => estimates.every((done) => done.one !== each)))
        input.io.out(
          `${nameOf(one)}\n  The inside of the barrel is not stated, so nothing can be estimated. Measure it wall to wall.\n\n`,
        )
      if (estimates.length > 0) input.io.out(`${lostSpringCaution}\n${springCautions.handling}\n`)
    }
    return estimates.length === calibers.length && calibers.length > 0 ? 0 : 1
  },
}
