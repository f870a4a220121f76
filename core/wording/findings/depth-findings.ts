import { figure } from '../figure.ts'
import { detail, type Judged, type Sentences } from './judged.ts'

const sizeNames: Readonly<Record<string, string>> = {
  driverPitchMm: 'the driver’s pitch diameter',
  drivenPitchMm: 'the driven part’s pitch diameter',
  centreDistanceMm: 'the centre distance',
}
const sizeOf = (judgement: Judged, key: 'first' | 'second') =>
  sizeNames[detail(judgement, key)] ?? detail(judgement, key)

const mm = (value: number | null, decimals: number) => `${figure(Math.abs(value ?? 0), decimals)} mm`

const pairOf = (judgement: Judged) =>
  `At the depth of ${detail(judgement, 'driver')} and ${detail(judgement, 'driven')}`

const modules = (judgement: Judged) =>
  `${pairOf(judgement)} ${sizeOf(judgement, 'first')} gives a module of ${mm(judgement.stated, 5)} and ` +
  `${sizeOf(judgement, 'second')} one of ${mm(judgement.found, 5)}: ${mm(judgement.difference, 5)} apart, where the printed ` +
  `rounding bears ${mm(judgement.allowed, 5)}`

const centres = (judgement: Judged) =>
  `${pairOf(judgement)} half of both pitch diameters is ${mm(judgement.stated, 3)} and the centre distance is stated as ` +
  `${mm(judgement.found, 3)}: ${mm(judgement.difference, 3)} apart, where the printed rounding bears ${mm(judgement.allowed, 3)}`

const unchecked = (judgement: Judged) => {
  const left = Number(judgement.details?.unchecked ?? 0)
  if (left === 0) return ''
  return ` ${left === 1 ? 'One depth' : `${left} depths`} could not be checked for want of counts or sizes.`
}

const lookAgain =
  'Look the sizes up again, count wheel and pinion, and see that pitch diameters are stated and not those over the points.'

/** What the proof of the depths finds. */
export const depthFindings: Sentences = {
  'module-shared': (j) =>
    (j.details?.depths === 1
      ? 'The sizes of the depth share a module within their printed rounding.'
      : `In each of ${detail(j, 'depths')} depths the sizes share a module within their printed rounding.`) +
    unchecked(j),
  'module-near': (j) =>
    `${modules(j)}. So little is usually a rounded or measured size: look it up, and try the depth before parts are made ` +
    `to it.${unchecked(j)}`,
  'module-differs': (j) => `${modules(j)}. ${lookAgain}${unchecked(j)}`,
  'centres-near': (j) =>
    `${centres(j)}. So little is usually a rounded or measured size: look it up, and try the depth before parts are made ` +
    `to it.${unchecked(j)}`,
  'centres-differ': (j) => `${centres(j)}. ${lookAgain}${unchecked(j)}`,
}
