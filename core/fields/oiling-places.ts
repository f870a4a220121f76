import type { CaliberFieldKey } from './caliber-fields.ts'
import type { PartKey } from './part-names.ts'

export interface OilingPlaceDef {
  readonly label: string
  /** Whether oil or grease belongs there; `seldom` stays dry though some makers put a trace. */
  readonly oil: 'wanted' | 'never' | 'seldom'
  /** True where a wanted place may be left dry by intent: mainsprings that are sold treated. */
  readonly mayBeDry?: true
  /** Fields and parts whose names, in every language, mean this place. */
  readonly known: readonly (CaliberFieldKey | PartKey)[]
  /** Further names; the longest one found in what is typed decides. */
  readonly names: readonly string[]
  /** Where it stands in print. */
  readonly source: string
}

const lewis = 'W. T. Lewis, Friction, Lubrication and the Lubricants in Horology, 1896'
const practice = 'common practice'

/** The places of a movement that are oiled, or left dry: one row a place. */
export const oilingPlaces = {
  mainspring: {
    label: 'mainspring',
    oil: 'wanted',
    mayBeDry: true,
    known: ['mainspring', 'barrel', 'barrelCover'],
    names: ['barrel floor', 'coils', 'fond du barillet', 'Federhausboden', 'veertonbodem'],
    source: `${lewis}, art. 48, 80`,
  },
  barrelWall: {
    label: 'barrel wall',
    oil: 'wanted',
    known: ['bridle'],
    names: ['barrel wall', 'wall of the barrel', 'paroi du barillet', 'Federhauswand', 'veertonwand'],
    source: practice,
  },
  barrelArbor: {
    label: 'barrel arbor',
    oil: 'wanted',
    known: [],
    names: [
      'barrel arbor',
      'barrel pivots',
      'arbre de barillet',
      'Federkern',
      'Federwelle',
      'Federhauskern',
      'veerkern',
      'veeras',
    ],
    source: `${lewis}, art. 48–49, 80`,
  },
  intermediatePivots: {
    label: 'intermediate pivots',
    oil: 'wanted',
    known: ['intermediateWheel', 'intermediatePinion'],
    names: ['intermediate', 'intermédiaire'],
    source: `${lewis}, art. 49–50`,
  },
  centrePivots: {
    label: 'centre pivots',
    oil: 'wanted',
    known: ['centreWheel', 'centrePinion'],
    names: ['centre', 'center'],
    source: `${lewis}, art. 49, 80`,
  },
  thirdPivots: {
    label: 'third pivots',
    oil: 'wanted',
    known: ['thirdWheel', 'thirdPinion'],
    names: ['third', 'Kleinboden', 'derde'],
    source: `${lewis}, art. 50–51`,
  },
  fourthPivots: {
    label: 'fourth pivots',
    oil: 'wanted',
    known: ['fourthWheel', 'fourthPinion'],
    names: ['fourth', 'seconds', 'seconde', 'Sekunde', 'vierde'],
    source: `${lewis}, art. 50–51`,
  },
  fifthPivots: {
    label: 'fifth pivots',
    oil: 'wanted',
    known: ['fifthWheel', 'fifthPinion'],
    names: ['fifth', 'cinquième', 'vijfde'],
    source: `${lewis}, art. 50–51`,
  },
  sweepPivots: {
    label: 'sweep pivots',
    oil: 'wanted',
    known: ['sweepPinion', 'sweepDriver'],
    names: ['sweep', 'centre seconds', 'center seconds', 'seconde au centre', 'Zentralsekunde', 'centrale seconde'],
    source: practice,
  },
  escapePivots: {
    label: 'escape pivots',
    oil: 'wanted',
    known: ['escapePinion'],
    names: [
      'escape',
      'scape wheel',
      'escape cap jewels',
      'roue d’échappement',
      'roue d’ancre',
      'roue de cylindre',
      'Hemmungsrad',
      'Ankerrad',
      'Gangrad',
      'Steigrad',
      'Zylinderrad',
      'cilinderrad',
    ],
    source: `${lewis}, art. 52`,
  },
  palletFaces: {
    label: 'pallet faces',
    oil: 'wanted',
    known: ['palletStone'],
    names: [
      'pallets',
      'pallet pins',
      'pallet faces',
      'impulse faces',
      'escape teeth',
      'escape wheel teeth',
      'teeth of the escape wheel',
      'cylinder',
      'dents de la roue d’échappement',
      'cylindre',
      'Paletten',
      'Hebeflächen',
      'Hemmungsradzähne',
      'Ankerradzähne',
      'Zylinder',
      'ankerstenen',
      'ankerradtanden',
      'cilinder',
    ],
    source: `${lewis}, art. 55, 57`,
  },
  palletPivots: {
    label: 'pallet pivots',
    oil: 'seldom',
    known: ['palletStaff'],
    names: [
      'pallet pivots',
      'lever pivots',
      'pallet fork pivots',
      'lever arbor',
      'pivots d’ancre',
      'pivots de l’ancre',
      'Ankerzapfen',
      'ankertappen',
    ],
    source: 'trade bench notes, 1953, item 11; W. T. Lewis, 1896, art. 53, asks only for small pivots',
  },
  forkAndPin: {
    label: 'fork and impulse pin',
    oil: 'seldom',
    known: ['palletFork', 'impulsePin', 'roller', 'guardPin'],
    names: ['impulse roller'],
    source: `${lewis}, art. 55; ${practice}`,
  },
  balancePivots: {
    label: 'balance pivots',
    oil: 'wanted',
    known: ['balance', 'balanceStaff', 'endstone', 'shockProtection'],
    names: [],
    source: `${lewis}, art. 54, 58`,
  },
  hairspring: {
    label: 'balance spring',
    oil: 'never',
    known: ['balanceSpring', 'overcoil'],
    names: ['spiral de balancier', 'spiral du balancier'],
    source: practice,
  },
  motionWork: {
    label: 'cannon pinion and motion work',
    oil: 'wanted',
    known: ['cannonPinion', 'minuteWheel', 'minutePinion', 'hourWheel', 'motionWork'],
    names: [],
    source: `${lewis}, art. 49; ${practice}`,
  },
  keylessWork: {
    label: 'keyless work',
    oil: 'wanted',
    known: ['windingStem', 'slidingPinion', 'windingPinion', 'crownWheel', 'ratchetWheel', 'yoke', 'settingWheel'],
    names: [
      'keyless work',
      'winding work',
      'winding wheels',
      'setting lever',
      'remontoir',
      'mise à l’heure',
      'tirette',
      'Aufzug',
      'Zeigerstellung',
      'Winkelhebel',
      'opwindwerk',
      'opwindmechanisme',
    ],
    source: `${lewis}, art. 59–60`,
  },
  trainTeeth: {
    label: 'train teeth and leaves',
    oil: 'seldom',
    known: [],
    names: [
      'teeth',
      'leaves',
      'centre wheel teeth',
      'third wheel teeth',
      'fourth wheel teeth',
      'dents des roues',
      'ailes des pignons',
      'denture',
      'Radzähne',
      'Triebzähne',
      'Verzahnung',
      'wieltanden',
      'rondseltanden',
    ],
    source: practice,
  },
} as const satisfies Record<string, OilingPlaceDef>

export type OilingPlace = keyof typeof oilingPlaces

/** Names under which handbooks put several places together. */
export const oilingGroups: readonly {
  readonly known: readonly PartKey[]
  readonly names: readonly string[]
  readonly places: readonly OilingPlace[]
}[] = [
  {
    known: ['goingTrain'],
    names: ['train pivots', 'train wheels', 'train'],
    places: ['intermediatePivots', 'centrePivots', 'thirdPivots', 'fourthPivots', 'fifthPivots', 'escapePivots'],
  },
  { known: [], names: ['escapement', 'échappement', 'Hemmung'], places: ['escapePivots', 'palletFaces'] },
]
