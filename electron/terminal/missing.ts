import { caliberFields } from '../../core/fields/caliber-fields.ts'
import { fieldFromHeading } from '../../core/record/headings.ts'
import { type CountKey, countKeys, isCountKey } from '../../core/trains/cuttable-counts.ts'
import { findMissingCounts, type MissingAnswer } from '../../core/trains/missing-counts.ts'
import { figure } from '../../core/wording/figure.ts'
import {
  decidingSentence,
  missingRemark,
  missingSentence,
  nearestSentence,
  nothingMissingSentence,
  unboundSentence,
} from '../../core/wording/missing-sentence.ts'
import { oneSentence } from '../../core/wording/one-sentence.ts'
import { workingLine } from '../../core/wording/working-line.ts'
import { calibersOf, type NamedCaliber } from './calibers-of.ts'
import { type Command, type CommandInput, libraryOption, printJson, UnusableInput } from './command.ts'
import { table } from './table.ts'

/** Rows of the table for a person; `--json` lists all. */
const mostRows = 20

export const missing: Command = {
  usage: 'missing FILE.json [--unknown a,b] | missing [--library FILE.sqlite] --caliber NAME [--unknown a,b]',
  does: 'Finds counts that are absent, or named, from beat rate, seconds hand, motion work and depths; status 1 where none fits.',
  options: { ...libraryOption, caliber: { type: 'string' }, unknown: { type: 'string' } },
  run: async (input) => {
    const unknown = unknownNamed(input.options.unknown)
    const { maker, designation, caliber, where } = onlyOne(input, await calibersOf(input))
    const name = `${maker} ${designation}`.trim()
    const answer = findMissingCounts(caliber, unknown)
    if (answer.unknown.length === 0) {
      const [first] = answer.unbound
      const why = first ? answer.unbound.map(unboundSentence).join(' ') : nothingMissingSentence(caliber.values)
      throw new UnusableInput(`${where}${first ? `.fields.${first.key}` : ''}: ${oneSentence(why)}`)
    }
    if (input.options.json) printJson(input.io, documentOf(answer))
    else input.io.out(`${[name, ...proseOf(answer)].join('\n')}\n`)
    return answer.solutions.length > 0 ? 0 : 1
  },
}

const unknownNamed = (option: string | boolean | undefined): readonly CountKey[] | undefined => {
  if (typeof option !== 'string') return undefined
  const names = option.split(',').map((name) => name.trim())
  const keys = names.map((name) => {
    const key = isCountKey(name) ? name : fieldFromHeading(name)
    if (key === undefined || !isCountKey(key))
      throw new UnusableInput(
        `--unknown names '${name}', which is no count of teeth or leaves; counts are ${countKeys.join(', ')}.`,
      )
    return key
  })
  return [...new Set(keys)]
}

const onlyOne = ({ options, words }: CommandInput, calibers: readonly NamedCaliber[]): NamedCaliber => {
  const [only] = calibers
  if (only !== undefined && calibers.length === 1) return only
  const place = words[0] ?? String(options.library ?? 'The library')
  throw new UnusableInput(
    only === undefined
      ? `${place} holds no caliber; name a file or library with one in it.`
      : `${place} holds ${calibers.length} calibers; name one of them with --caliber.`,
  )
}

const documentOf = ({ unknown, unbound, solutions, nearest, decide, complete }: MissingAnswer) => ({
  unknown,
  solutions: solutions.map(({ counts, rate, remarks }) => ({
    counts,
    beatRateVph: rate?.valueOf() ?? null,
    remarks: remarks.map(missingRemark),
  })),
  complete,
  ...(solutions.length === 0 && {
    nearest: nearest.map(({ counts, rate, rateErrorSecondsPerDay, secondsHandErrorSecondsPerDay, hourHandTurns }) => ({
      counts,
      beatRateVph: rate?.valueOf() ?? null,
      rateErrorSecondsPerDay,
      secondsHandErrorSecondsPerDay,
      hourHandTurns: hourHandTurns?.valueOf() ?? null,
    })),
  }),
  ...(decide.length > 0 && { decide: decide.map(decidingSentence) }),
  ...(unbound.length > 0 && { unbound: unbound.map(({ key }) => key) }),
})

const proseOf = (answer: MissingAnswer): readonly string[] => {
  const { unknown, unbound, solutions, nearest, decide } = answer
  const shown = solutions.slice(0, mostRows)
  const rows = shown.map(({ counts, rate, remarks }) => [
    ...unknown.map((key) => String(counts[key] ?? '')),
    rate === null ? '' : figure(rate.valueOf()),
    remarks.map(missingRemark).join(' '),
  ])
  const headings = [...unknown.map((key) => caliberFields[key].label), 'Beats an hour', '']
  const [first] = solutions
  return [
    missingSentence(answer),
    ...(rows.length > 0 ? [table([headings, ...rows]).replace(/^/gm, '  ')] : []),
    ...(solutions.length > shown.length
      ? [`  and ${solutions.length - shown.length} more; --json lists them all`]
      : []),
    ...(first?.working ?? []).map((step) => `  ${workingLine(step)}`),
    ...nearest.map((each) => `  ${nearestSentence(each)}`),
    ...decide.map(decidingSentence),
    ...unbound.map(unboundSentence),
  ]
}
