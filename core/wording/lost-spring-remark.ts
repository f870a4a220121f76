import type { LostSpringRemark } from '../springs/lost-spring.ts'
import { figure } from './figure.ts'

type Figures = LostSpringRemark['figures']
const at = (figures: Figures, key: string, decimals = 2) => figure(figures[key] ?? 0, decimals)

const sentences: Readonly<Record<LostSpringRemark['code'], (figures: Figures) => string>> = {
  'turns-given': (f) => `For ${at(f, 'turns')} theoretical turns, as given.`,
  'turns-from-hours': (f) =>
    `${at(f, 'hours')} h of going ÷ ${at(f, 'hoursPerTurn', 3)} h a turn, and ${at(f, 'slack')} turns for the slack near ` +
    `let-down: ${at(f, 'turns')} theoretical turns.`,
  'turns-from-stop-work': (f) =>
    `${at(f, 'stop')} turns of the stop work, and ${at(f, 'beside')} for set-up and what is left unused: ${at(f, 'turns')} theoretical turns.`,
  'turns-from-proportion': (f) =>
    `Neither hours nor turns are known: taken as one ${at(f, 'share', 1)}th of the barrel, the middle of 75 to 100. A rough ` +
    'guess: count barrel teeth and centre pinion for a better one.',
  'arbor-assumed': (f) =>
    `The hub is not stated; a third of the barrel is assumed, ${at(f, 'arborMm')} mm. Measure it where the spring hooks: 0.05 mm ` +
    'changes the turns by some 2 %.',
  'height-from-depth': (f) =>
    `Height: ${at(f, 'depthMm')} mm of free depth less ${at(f, 'playMm')} mm of play under a flat lid, down to the step of ` +
    '0.05 mm. Under a recessed lid the spring may reach the seat of the lid.',
  'depth-not-stated': () =>
    'The depth of the barrel is not stated, so the height cannot be said. Measure it from floor to lid.',
  'bridle-not-stated': () =>
    'A slipping bridle lines the wall, and its thickness is not stated: measure it, or the spring comes out too thick.',
  'arbor-thin': (f) =>
    `The hub is only ${at(f, 'ratio', 1)} thicknesses wide; below 20 the strip is bent so sharply that it sets or breaks. ` +
    'Look at the hub and the hours again.',
  'arbor-thick': (f) =>
    `The hub is ${at(f, 'ratio', 1)} thicknesses wide, more than is usual. Look at the hub and the hours again.`,
}

/** What an estimate of a lost spring rests on, in plain words. */
export const lostSpringRemark = ({ code, figures }: LostSpringRemark): string => sentences[code](figures)

/** What stands beside every estimate. */
export const lostSpringCaution =
  'An estimate is not a specification: where the maker’s figures can be found, order by them.'
