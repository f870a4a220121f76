import { figure } from '../figure.ts'
import { detail, found, type Judged, off, openBarrel, type Sentences, stated } from './judged.ts'

const roomTaken = (judgement: Judged) =>
  `The spring takes ${figure((judgement.found ?? 0) * 100, 1)} % of the free space`

const goingHours = (judgement: Judged) =>
  `${stated(judgement)} h of going is stated; ${detail(judgement, 'turns')} turns ` +
  `${judgement.details?.limit === 'stop-work' ? 'of the stop work' : 'of the spring (theoretical)'} at ` +
  `${detail(judgement, 'hoursPerTurn')} h a turn give ${found(judgement)} h`

const bend = (judgement: Judged) => {
  const strain = figure(Number(judgement.details?.strainPercent ?? 0), 1)
  return (
    `The hub of the arbor is ${found(judgement, 1)} times as thick as the spring, where watch practice is ` +
    `${detail(judgement, 'usualFrom')} to ${detail(judgement, 'usualTo')} (strain of a straight strip at its surface ${strain} %)`
  )
}

const lengthOff = (judgement: Judged) =>
  `The spring is stated ${stated(judgement, 1)} mm long; ${found(judgement, 1)} mm would give the most turns`

const turnsLost = (judgement: Judged) =>
  `which costs ${detail(judgement, 'lostTurns')} of ${detail(judgement, 'mostTurns')} turns ` +
  `(${figure(Number(judgement.details?.lostPercent ?? 0), 1)} %)`

const suitingThickness = (judgement: Judged) =>
  `If the length is right, a strip of ${figure(Number(judgement.details?.suitingThicknessMm ?? 0), 3)} mm would suit it. ` +
  `Measure length and thickness again. ${openBarrel}`

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
  'bend-usual': (j) => `${bend(j)}.`,
  'bend-sharp': (j) =>
    `${bend(j)}. Below ${detail(j, 'least')} the inner coil may set or break. Check the thickness, and measure the arbor ` +
    `where the spring winds, not at its pivot. ${openBarrel}`,
  'bend-wide': (j) =>
    `${bend(j)}. So thick a hub harms no spring but takes its room. Check the thickness and the arbor. ${openBarrel}`,
  'length-best': (j) => `${lengthOff(j)}. It is ${off(j, 1)} mm off, ${turnsLost(j)}.`,
  'length-short': (j) => `${lengthOff(j)}. It is ${off(j, 1)} mm too short, ${turnsLost(j)}. ${suitingThickness(j)}`,
  'length-long': (j) => `${lengthOff(j)}. It is ${off(j, 1)} mm too long, ${turnsLost(j)}. ${suitingThickness(j)}`,
  'length-over': (j) =>
    `${lengthOff(j)}. It is ${off(j, 1)} mm too long, more than twice the best, so that it cannot be got into the barrel ` +
    `at this thickness. ${suitingThickness(j)}`,
}
