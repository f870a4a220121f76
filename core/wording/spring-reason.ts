import { caliberFields } from '../fields/caliber-fields.ts'
import type { SpringReason, SpringReasonCode, SpringVerdict } from '../springs/spring-reasons.ts'
import { figure } from './figure.ts'

/** The word and the mark for each verdict on a spring, so that none is told by colour alone. */
export const springVerdictWords = {
  'as-specified': { word: 'as specified', mark: '✓' },
  acceptable: { word: 'acceptable', mark: '○' },
  'not-advised': { word: 'not advised', mark: '△' },
  'does-not-fit': { word: 'does not fit', mark: '✕' },
} as const satisfies Record<SpringVerdict, { word: string; mark: string }>

type Figures = SpringReason['figures']

const mm = (figures: Figures, key: string) => `${figure(Number(figures[key]), 3)} mm`
const percent = (share: number) => `${figure(Math.abs(share) * 100, 1)} %`

/**
 * A change of torque as the band between its two bounds: at full wind, and in each turn.
 * @example
 * torqueBand(1.1, 1.15) // '10 to 15 % more'
 */
export const torqueBand = (fullWind: number, rate: number): string => {
  const [low, high] = [fullWind - 1, rate - 1].toSorted((a, b) => Math.abs(a) - Math.abs(b)) as [number, number]
  const sense = (change: number) => (change > 0 ? 'more' : 'less')
  if (Math.sign(low) !== Math.sign(high) && Math.abs(low) > 5e-4) {
    return `${percent(low)} ${sense(low)} to ${percent(high)} ${sense(high)}`
  }
  if (figure(Math.abs(low) * 100, 1) === figure(Math.abs(high) * 100, 1)) return `${percent(high)} ${sense(high)}`
  return `${figure(Math.abs(low) * 100, 1)} to ${percent(high)} ${sense(high)}`
}

const band = ({ torqueFullWind, torqueRate }: Figures) => torqueBand(Number(torqueFullWind), Number(torqueRate))

const labelOfEnd = (end: unknown): string => {
  const { choices } = caliberFields.springEnd
  return Object.hasOwn(choices, String(end)) ? choices[end as keyof typeof choices] : String(end)
}
const labelOfMaterial = (material: unknown): string => {
  const { choices } = caliberFields.springMaterial
  return Object.hasOwn(choices, String(material)) ? choices[material as keyof typeof choices] : String(material)
}

const sentences: Readonly<Record<SpringReasonCode, (figures: Figures) => string>> = {
  'height-jams': (f) => `${mm(f, 'overMm')} higher than the barrel is deep: it would jam under the lid.`,
  'fill-over': (f) => `It would take ${percent(Number(f.fill))} of the free space: it does not go in.`,
  'end-no-hold': (f) =>
    `Its outer end does not hold in this barrel, which is made for a ${labelOfEnd(f.specified)}. Do not alter the barrel for it.`,
  'not-specified': () =>
    'The height or thickness that the maker specified is not known, so nothing can be said of its strength. Look the specification up first.',
  thicker: (f) =>
    `${mm(f, 'byMm')} thicker than specified: about ${band(f)} torque. The movement was designed for one strength; a tired ` +
    'movement wants cleaning and repair, not force.',
  'torque-high': (f) =>
    `About ${percent(Number(f.torqueFullWind) - 1)} more torque at full wind than the movement was designed for. A tired ` +
    'movement wants cleaning and repair, not force.',
  'torque-low': (f) => `About ${band(f)} torque: the balance would swing too little.`,
  'hours-short': (f) =>
    `Its theoretical turns give ${figure(Number(f.hours), 1)} h; ${figure(Number(f.stated), 1)} h of going is stated.`,
  'fill-far': (f) =>
    `It takes ${percent(Number(f.fill))} of the free space; beyond a third to two thirds too many turns are lost.`,
  'height-unproved': (f) =>
    `${mm(f, 'byMm')} higher than specified, and the depth of the barrel is not stated: measure the depth before ordering.`,
  'height-close': (f) => `Only ${mm(f, 'clearanceMm')} of play under the lid: it may do where the lid is recessed.`,
  'height-low': (f) =>
    `${mm(f, 'byMm')} lower than specified: the coils can slip over one another, and torque is given away.`,
  lower: (f) =>
    `${mm(f, 'byMm')} lower than specified: ${percent(Number(f.torqueFullWind) - 1)} ${
      Number(f.torqueFullWind) < 1 ? 'less' : 'more'
    } torque at full wind.`,
  higher: (f) => `${mm(f, 'byMm')} higher than specified; ${mm(f, 'clearanceMm')} of play is left under the lid.`,
  thinner: (f) => `${mm(f, 'byMm')} thinner than specified: about ${band(f)} torque.`,
  longer: (f) => `${percent(Number(f.share))} longer than specified.`,
  shorter: (f) => `${percent(Number(f.share))} shorter than specified.`,
  'fill-off': (f) =>
    `It takes ${percent(Number(f.fill))} of the free space, a little off the half that gives most turns.`,
  'end-alike': (f) =>
    `Its end hooks as a ${labelOfEnd(f.specified)} does, but is not the one specified: look at the hook in the barrel.`,
  'end-not-known': () =>
    'Whether its outer end holds in this barrel is not known: compare it with the hook in the barrel.',
  'other-material': (f) =>
    `Another alloy than the ${labelOfMaterial(f.specified)} specified: the same sizes give another torque, and the ratios here do not hold.`,
  'length-not-specified': () =>
    'The length that the maker specified is not known; turns and fill are those of this spring.',
  'length-not-given': () => 'Its length is not given, so turns and fill cannot be worked out: ask the supplier.',
  'barrel-not-known': () => 'Barrel or arbor is not stated, so turns and fill cannot be worked out.',
  'none-left': () => 'None is left in the tray.',
}

/** What speaks for or against a spring, in plain words. */
export const springReason = ({ code, figures }: SpringReason): string => sentences[code](figures)
