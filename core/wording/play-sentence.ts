import type { PlayFinding, PlayRemark, PlayVerdict } from '../bench/judge-play.ts'
import { finePlaySource, playPlaces } from '../bench/play-places.ts'
import { clockPlaySource, type PlayStandard } from '../bench/play-standard.ts'
import { figure } from './figure.ts'
import { limitsText, measuredText } from './measured-text.ts'

interface Words {
  readonly word: string
  readonly mark: string
}

/** The word and the mark for a play beside its limits, so that none is told by colour alone. */
export const playVerdictWords: Readonly<Record<PlayVerdict, Words>> = {
  within: { word: 'within', mark: '✓' },
  below: { word: 'below', mark: '▽' },
  above: { word: 'above', mark: '△' },
  'cannot-tell': { word: 'cannot tell', mark: '○' },
  'no-figure': { word: 'not judged', mark: '–' },
}

const inWords = { 'just-free': 'just free', 'merely-free': 'merely free' } as const
const shortly = (source: string): string => {
  const [, author = '', year = '', page = ''] = /^(?:[A-Z]\. )+(\w+), .*?(\d{4}), (p\. \d+)$/.exec(source) ?? []
  return `${author} ${year}, ${page}`
}
const cylinderSource = 'W. L. Goodrich, The Modern Clock, 1905, p. 167'

/**
 * What a play is held against and where that stands, in one line.
 * @example
 * playStandardLine({ by: 'fine-watches', limits: { low: 0.03, high: 0.05 } }) // '0.03 to 0.05 mm: Kleinlein 1920, p. 35'
 */
export const playStandardLine = (standard: PlayStandard): string => {
  switch (standard.by) {
    case 'maker':
      return `${limitsText(standard.limits, 'mm')}, the maker’s figure`
    case 'fine-watches':
      return `${limitsText(standard.limits, 'mm')}: ${shortly(finePlaySource)}`
    case 'clock-pivots':
      return `${figure(standard.limits.low, 3)} to ${figure(standard.limits.high, 3)} mm: ${shortly(clockPlaySource)}`
    case 'cylinder-pivots':
      return `${limitsText(standard.limits, 'mm')}, a sixth of the pivot: ${shortly(cylinderSource)}`
    case 'words':
      return `“${inWords[standard.words]}”: ${shortly(finePlaySource)}`
    case 'pivot-wanted':
      return `at least a sixth of the pivot: ${shortly(cylinderSource)}`
    case 'nothing':
      return 'no published figure'
  }
}

const remarks: Readonly<Record<PlayRemark, string>> = {
  'called-too-close': 'The book calls it very close for so large a pivot.',
  'called-too-great': 'The book calls it too great.',
  'called-detrimental': 'The book calls it more harmful than too long a play of the lever.',
  'called-less-harmful': 'The book calls it less harmful than too short a play of the balance.',
  'pin-may-strike': 'Much more than this can let the impulse pin strike the fork.',
  'wide-needs-no-cure': 'Wide play alone seldom spoils a rate: look for wear in hole and pivot before you close it.',
  'worn-out': 'It has reached half the pivot: bush the hole or replace the pivot, in fine work long before.',
  'perhaps-worn-out': 'It may have reached half the pivot, where a hole is bushed at the latest: measure it finer.',
}

const than: Readonly<Record<Exclude<PlayStandard['by'], 'words' | 'pivot-wanted' | 'nothing'>, string>> = {
  maker: 'the maker states',
  'fine-watches': 'was found in fine watches',
  'clock-pivots': 'is usual in clocks',
  'cylinder-pivots': 'the rule for cylinders asks',
}

const verdictSentence = ({ verdict, standard, measured }: PlayFinding): string => {
  switch (standard.by) {
    case 'words':
      return `The book says “${inWords[standard.words]}” and gives no figure: feel for it.`
    case 'pivot-wanted':
      return 'The rule for a cylinder goes by its pivot: type hole and pivot.'
    case 'nothing':
      return 'No figure for this place was to be had in print: compare it with a sound movement of the same caliber.'
    default: {
      const by = than[standard.by]
      if (verdict === 'within') return `Within what ${by}.`
      if (verdict === 'above') return `More than ${by}.`
      if (verdict === 'below')
        return standard.by === 'cylinder-pivots'
          ? `Less than ${by}: it goes while the oil is fresh and fails once it thickens.`
          : `Less than ${by}. Too little freedom causes more stoppages than too much.`
      return `It may be ${figure(measured.low, 4)} or ${figure(measured.high, 4)} mm, which reaches past the edge: measure it finer.`
    }
  }
}

/**
 * What a measured play comes to, in plain words, with what the books say of such a case.
 * @example
 * playSentence({ place: 'third', measure: 'end', measured: { value: 0.04, low: 0.035, high: 0.045 }, standard: { by: 'fine-watches', limits: { low: 0.03, high: 0.05 } }, verdict: 'within', remarks: [] }) // 'Within what was found in fine watches.'
 */
export const playSentence = (finding: PlayFinding): string =>
  [verdictSentence(finding), ...finding.remarks.map((remark) => remarks[remark])].join(' ')

/** What is said of an arbor with one wide pivot and one close. */
export const unevenPivotsSentence =
  'One pivot is wide and the other close: the close one is almost certain to bind as soon as the mainspring’s power comes on.'

/** What goes before every figure of this page. */
export const playRules: readonly string[] = [
  'The maker’s figure goes first. What is printed here was found in fine watches, and is no limit.',
  'Small and thin watches take the lower figure, large and thick ones the higher.',
  'Too little freedom causes more stoppages than too much: oil needs room.',
]

/** How many plays were measured, and how they stand. */
export const playSummary = (findings: readonly Pick<PlayFinding, 'verdict'>[]): string => {
  if (findings.length === 0)
    return 'Nothing is measured yet. Type an end-shake, a side-shake, or a hole and its pivot; what is left open is not judged.'
  const counted = (Object.keys(playVerdictWords) as PlayVerdict[]).flatMap((verdict) => {
    const count = findings.filter((finding) => finding.verdict === verdict).length
    return count === 0 ? [] : [`${count} ${playVerdictWords[verdict].word}`]
  })
  return `${findings.length} measured: ${counted.join(', ')}.`
}

/** The names of what is measured on an arbor. */
export const playNames = {
  end: 'End-shake',
  upper: 'Side-shake, upper pivot',
  lower: 'Side-shake, lower pivot',
} as const
export type PlayName = keyof typeof playNames

/**
 * A measured play as a line of text for notes or a job sheet.
 * @example
 * playLine('upper', { place: 'third', measure: 'side', measured: { value: 0.018, low: 0.016, high: 0.02 }, standard: { by: 'fine-watches', limits: { low: 0.015, high: 0.02 } }, verdict: 'within', remarks: [] }) // 'Third wheel, side-shake, upper pivot: 0.018 ± 0.002 mm, within (0.015 to 0.02 mm: Kleinlein 1920, p. 35)'
 */
export const playLine = (name: PlayName, { place, measured, standard, verdict }: PlayFinding): string =>
  `${playPlaces[place].label}, ${playNames[name].toLowerCase()}: ${measuredText(measured, 'mm')}, ` +
  `${playVerdictWords[verdict].word} (${playStandardLine(standard)})`

/** Why one limit alone is not read where something was measured. */
export const oneLimitSentence = (label: string, text: string): string =>
  `${label}: "${text}" is one limit only; write what you measured, with ± where you know it.`

/**
 * What size the pivot of a cylinder usually has.
 * @example
 * cylinderPivotSentence(0.11) // 'Its pivots are usually about an eighth of it, 0.11 mm (Goodrich 1905, p. 167).'
 */
export const cylinderPivotSentence = (pivotMm: number): string =>
  `Its pivots are usually about an eighth of it, ${figure(pivotMm, 3)} mm (${shortly(cylinderSource)}).`

/** What is still wanted before a side-shake can be told. */
export const otherSizeWanted = {
  hole: 'Type the hole too, or the side-shake itself.',
  pivot: 'Type the pivot too, or the side-shake itself.',
} as const
