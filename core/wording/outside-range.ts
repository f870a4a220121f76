import type { OutsideRangeCode } from '../formulas/outside-range.ts'
import { labelOf } from '../record/label-of.ts'
import { figure } from './figure.ts'

type Details = Readonly<Record<string, number | string>>

const shown = (details: Details, key: string) => figure(Number(details[key] ?? 0), 3)

/** Figures of the bench that are no field of a caliber. */
const benchFigures: Readonly<Record<string, string>> = {
  liftTimeMs: 'lift time',
  amplitudeDeg: 'amplitude',
  forkAngleDeg: 'angle of the fork',
  leverRatio: 'ratio of fork to roller',
  hertz: 'frequency',
  inertiaMgCm2: 'moment of inertia',
  stiffnessNmPerRad: 'stiffness of the hairspring',
  massMg: 'mass of the ring',
  stripMassMg: 'mass of the strip',
  densityGPerCm3: 'density',
  turns: 'number of turns',
  coils: 'number of coils',
  packMm: 'width of the pack',
  radiusMm: 'radius of the ring',
  torqueNm: 'torque',
  modulusNPerMm2: 'modulus of elasticity',
  stressNPerMm2: 'stress',
  angleDeg: 'angle',
  inertia: 'inertia that is left',
  stiffness: 'stiffness that is left',
  length: 'length that is left',
  pitchDiameterMm: 'pitch diameter',
  moduleMm: 'module',
  teeth: 'count of teeth',
  handsTurn: 'turn of the hands',
  holeMm: 'hole',
  pivotMm: 'pivot',
  cylinderMm: 'body of the cylinder',
}
const nameOf = (field: string) => benchFigures[field] ?? labelOf(field).toLowerCase()

const sentences: Readonly<Record<OutsideRangeCode, (details: Details) => string>> = {
  'not-positive': (d) => `The ${nameOf(String(d.field))} must be more than nothing. Correct it.`,
  'arbor-fills-barrel': (d) =>
    `A barrel arbor of ${shown(d, 'barrelArborMm')} mm leaves no room in a barrel of ${shown(d, 'barrelInsideMm')} mm. ` +
    'Measure both again: the arbor at the hub, the barrel inside.',
  'bridle-fills-barrel': (d) =>
    `A bridle of ${shown(d, 'bridleThicknessMm')} mm leaves no room in a barrel of ${shown(d, 'barrelInsideMm')} mm. Measure both again.`,
  'pack-fills-barrel': (d) =>
    `A pack of ${shown(d, 'packMm')} mm on each side leaves nothing open in a barrel of ${shown(d, 'barrelInsideMm')} mm. Measure both again.`,
  'spring-overfills-barrel': (d) =>
    `The spring takes ${figure(Number(d.fill ?? 0) * 100, 1)} % of the free space, so it cannot be wound in this barrel ` +
    'and no turns follow. Check its length and thickness and the barrel’s sizes.',
  'lift-outlasts-vibration': (d) =>
    `A lift of ${shown(d, 'liftTimeMs')} ms outlasts a whole vibration, which takes ${shown(d, 'longestMs')} ms at ` +
    `${figure(Number(d.beatRateVph ?? 0))} vph. Check the lift time and the beat rate.`,
  'swing-within-lift': (d) =>
    `An amplitude of ${shown(d, 'amplitudeDeg')}° ends within a lift angle of ${shown(d, 'liftAngleDeg')}°: the balance would not ` +
    'swing free of the fork. Check both.',
  'no-usual-lift': (d) =>
    `What lift angle is usual for this escapement was not to be had in print, so the ${shown(d, 'liftAngleDeg')}° are neither ` +
    'confirmed nor doubted.',
  'pivot-fills-hole': (d) =>
    `A pivot of ${figure(Number(d.pivotMm), 4)} mm does not go into a hole of ${figure(Number(d.holeMm), 4)} mm. Measure both again.`,
}

/** Why a proof's figures lie outside the range of its formula, in plain words. */
export const outsideRangeSentence = (reason: string, details: Details = {}): string =>
  Object.hasOwn(sentences, reason) ? sentences[reason as OutsideRangeCode](details) : reason
