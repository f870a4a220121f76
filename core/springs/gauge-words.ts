import { lengthUnitOf } from '../quantities/length-units.ts'
import { tidyPrint } from '../quantities/tidy-print.ts'
import { foldHeading } from '../record/fold-heading.ts'
import { gaugeNumber } from './gauge-number.ts'
import type { GaugeMeasure } from './gauge-table.ts'

/** What a printed gauge says, piece by piece: a number of a gauge, a size with its unit, a word, or what stands between. */
export type GaugeWord =
  | { readonly kind: 'number' | 'size'; readonly text: string; readonly folded: string }
  | { readonly kind: 'word'; readonly text: string; readonly folded: string }
  | { readonly kind: 'label'; readonly text: string; readonly folded: string; readonly names: GaugeMeasure | 'other' }
  | { readonly kind: 'times' | 'break'; readonly text: string; readonly folded: '' }

/** Words that say nothing of which gauge or number is meant, in four languages. */
const idle = new Set(
  (
    'gauge gage no nr n num number numero jauge lehre nummer maat mainspring spring ressort feder zugfeder veer ' +
    'of the de du der van'
  ).split(' '),
)
const labels: ReadonlyMap<string, GaugeMeasure | 'other'> = new Map([
  ...['strength', 'thickness', 'force', 'epaisseur', 'starke', 'dicke', 'sterkte', 'dikte'].map(
    (word) => [word, 'thickness'] as const,
  ),
  ...['height', 'width', 'breadth', 'hauteur', 'largeur', 'hohe', 'breite', 'hoogte', 'breedte'].map(
    (word) => [word, 'height'] as const,
  ),
  ...['length', 'longueur', 'lange', 'lengte', 'barrel', 'barillet', 'federhaus', 'veerton'].map(
    (word) => [word, 'other'] as const,
  ),
])

const pieces = /\d{1,3} \d ?\/ ?[2-8](?!\d)|\d+ ?\/ ?\d+|\d+(?:[.,]\d+)*(?:[A-Wa-w](?!\p{L}))?|\p{L}+|'''|[×*"µ,;()/]/gu

const pieceOf = (text: string): GaugeWord => {
  if (/^\d/.test(text))
    return { kind: gaugeNumber(text) === null ? 'size' : 'number', text, folded: gaugeNumber(text) ?? text }
  if (/^(?:×|\*|x|by)$/i.test(text)) return { kind: 'times', text, folded: '' }
  if (!/\p{L}/u.test(text)) return { kind: 'break', text, folded: '' }
  const folded = foldHeading(text)
  const names = labels.get(folded)
  return names === undefined ? { kind: 'word', text, folded } : { kind: 'label', text, folded, names }
}

/**
 * Takes a printed gauge apart. Idle words are left out; a figure with a unit behind it, and a
 * fraction such as `12/100`, is a size.
 * @example
 * gaugeWords('Harrow gauge no. 8 × 12 mm').map(({ kind, text }) => `${kind} ${text}`) // ['word Harrow', 'number 8', 'times ×', 'size 12']
 */
export const gaugeWords = (printed: string): readonly GaugeWord[] => {
  const words: GaugeWord[] = []
  for (const [text] of tidyPrint(printed).matchAll(pieces)) {
    const last = words.at(-1)
    if ((last?.kind === 'number' || last?.kind === 'size') && lengthUnitOf(text.toLowerCase()) !== undefined) {
      words[words.length - 1] = { ...last, kind: 'size' }
      continue
    }
    if (!idle.has(foldHeading(text)) || !/\p{L}/u.test(text)) words.push(pieceOf(text))
  }
  return words
}
