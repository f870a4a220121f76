import { figure } from '../figure.ts'
import { detail, found, type Judged, off, openBarrel, type Sentences, stated } from './judged.ts'

const roomTaken = (judgement: Judged) =>
  `The spring takes ${figure((judgement.found ?? 0) * 100, 1)} % of the free space`

const goingHours = (judgement: Judged) =>
  `${stated(judgement)} h of going is stated; ${detail(judgement, 'turns')} turns ` +
  `${judgement.details?.limit === 'stop-work' ? 'of the stop work' : 'of the spring (theoretical)'} at ` +
  `${detail(judgement, 'hoursPerTurn')} h a turn give ${found(judgement)} h`

/** What the proofs of barrel and mainspring find. */
export const springFindings: Sentences = {
  'fill-usual': (j) => `${roomTaken(j)}, near the half that gives the most turns.`,
  'fill-low': (j) =>
    `${roomTaken(j)}, less than the usual 40 to 60 %. Check length and thickness: the spring seems short or thin for ` +
    `this barrel. ${openBarrel}`,
  'fill-high': (j) =>
    `${roomTaken(j)}, more than the usual 40 to 60 %. Check length and thickness: the spring seems long or thick for ` +
    `this barrel. ${openBarrel}`,
  'fill-over': (j) =>
    `${roomTaken(j)}, so it does not fit in the barrel. Check its length and thickness and the barrel’s sizes. ${openBarrel}`,
  'stands-free': (j) => `The spring stands ${off(j, 3)} mm below the lid.`,
  'stands-close': (j) =>
    `The spring is ${stated(j, 3)} mm high in a barrel ${found(j, 3)} mm deep: only ${off(j, 3)} mm of play, where about ` +
    `${detail(j, 'usualMm')} mm is usual under a flat lid. That may do where the lid is recessed; look at the lid. ${openBarrel}`,
  'stands-loose': (j) =>
    `The spring is ${stated(j, 3)} mm high in a barrel ${found(j, 3)} mm deep: ${off(j, 3)} mm of play, where about ` +
    `${detail(j, 'usualMm')} mm is usual. Check height and depth. ${openBarrel}`,
  'stands-proud': (j) =>
    `The spring is ${stated(j, 3)} mm high in a barrel ${found(j, 3)} mm deep: ${off(j, 3)} mm too high, so it would jam ` +
    `under the lid. Check height and depth. ${openBarrel}`,
  'hours-agree': (j) => `${goingHours(j)}, which agrees.`,
  'hours-short': (j) =>
    `${goingHours(j)}, ${off(j)} h too few. Check the barrel teeth and centre pinion, the spring’s sizes and the stated ` +
    `hours. ${openBarrel}`,
  'hours-over': (j) =>
    `${goingHours(j)}, ${off(j)} h more than stated. Check the barrel teeth and centre pinion, the spring’s sizes and the ` +
    `stated hours. ${openBarrel}`,
}
