import { detail, found, type Judged, off, type Sentences, stated } from './judged.ts'

const hands: Readonly<Record<string, string>> = {
  hourHandMm: 'hour hand',
  minuteHandMm: 'minute hand',
  secondsHandMm: 'seconds hand',
}
const hand = (judgement: Judged, which: 'outer' | 'inner') => {
  const key = detail(judgement, which)
  return hands[key] ?? key
}
const holes = (j: Judged) =>
  `The hole of the ${hand(j, 'outer')} is ${found(j, 3)} mm, that of the ${hand(j, 'inner')} ${stated(j, 3)} mm`

const usualLift = (j: Judged) => `${detail(j, 'least')} to ${detail(j, 'most')}°`

/** What the proofs of hands and escapement find. */
export const movementFindings: Sentences = {
  'hands-in-order': (j) =>
    `The holes grow from hand to hand; the ${hand(j, 'outer')} has ${off(j, 3)} mm more than the ${hand(j, 'inner')}.`,
  'hands-close': (j) =>
    `${holes(j)}: larger by no more than the figures are rounded. Measure both, or look for a finer figure.`,
  'hands-equal': (j) =>
    `${holes(j)}. They cannot be alike, since one pipe stands inside the other. Measure both again.`,
  'hands-crossed': (j) =>
    `${holes(j)}, but the pipe of the ${hand(j, 'outer')} stands outside that of the ${hand(j, 'inner')} and needs the larger ` +
    'hole. Look whether the two have changed places, or measure both again.',
  'seconds-hand-large': (j) =>
    `${holes(j)}. A seconds hand that stands by itself usually has the smaller hole. Look whether the two have changed ` +
    'places, or where the seconds hand stands.',
  'lift-usual': (j) => `A lift angle of ${stated(j)}° is usual: most levers have ${usualLift(j)}.`,
  'lift-as-of-old': (j) =>
    `A lift angle of ${stated(j)}° is one of its time: books up to ${detail(j, 'lastPrintYear')} draw levers with ${usualLift(j)}.`,
  'lift-small': (j) =>
    `A lift angle of ${stated(j)}° is small: most levers have ${usualLift(j)}. Books up to ${detail(j, 'lastPrintYear')} do draw ` +
    'so small ones; state the first year if the caliber is that old, or look the angle up again.',
  'lift-large': (j) =>
    `A lift angle of ${stated(j)}° is large: most levers have ${usualLift(j)}. Look it up again: each degree off shifts the ` +
    'amplitude by about 2 %.',
  'lift-beyond': (j) =>
    `A lift angle of ${stated(j)}° is ${off(j)}° outside the ${usualLift(j)} that most levers have. Look it up again, and see ` +
    'whether the amplitude was written in its place.',
}
