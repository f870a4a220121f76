import type { Names } from './field.ts'

/** A column of a list: `part` is a free name, `amount` text; `length` is read as a length. */
export interface ListColumn {
  readonly kind: 'choice' | 'text' | 'count' | 'length' | 'texts'
  readonly label: string
  readonly choices?: Readonly<Record<string, string>>
  readonly optional?: true
}

export interface ListDef {
  readonly label: string
  /** What one line of the list is called. */
  readonly line: string
  readonly meaning: string
  readonly names: Names
  readonly columns: Readonly<Record<string, ListColumn>>
}

/** The lists that a caliber carries beside its fields: one row a list, its columns in the order shown. */
export const listFields = {
  jewels: {
    label: 'Jewels by place',
    line: 'jewel group',
    meaning: 'Which places are jewelled, with what kind of stone and how many, so that the total can be checked.',
    names: {
      en: ['jewelling', 'jewel breakdown'],
      fr: ['empierrage', 'répartition des rubis'],
      de: ['Steinbesatz', 'Verteilung der Steine'],
      nl: ['steenzetting', 'verdeling van de stenen'],
    },
    columns: {
      place: {
        kind: 'choice',
        label: 'Place',
        choices: {
          balance: 'balance',
          pallet: 'pallet',
          escape: 'escape',
          fifth: 'fifth',
          fourth: 'fourth',
          third: 'third',
          centre: 'centre',
          barrel: 'barrel',
          sweep: 'sweep',
          winding: 'winding',
          other: 'other',
        },
      },
      kind: {
        kind: 'choice',
        label: 'Kind',
        choices: { hole: 'hole', cap: 'cap', 'pallet-stone': 'pallet stone', impulse: 'impulse', other: 'other' },
      },
      count: { kind: 'count', label: 'Count' },
    },
  },
  lubrication: {
    label: 'Oiling',
    line: 'oiling point',
    meaning:
      "Each place to be oiled or greased, or to be left dry, with what and how much; the maker's own instruction comes first.",
    names: {
      en: ['oiling', 'lubrication', 'oiling chart'],
      fr: ['huilage', 'lubrification', 'graissage'],
      de: ['Ölung', 'Schmierung', 'Ölvorschrift'],
      nl: ['olie', 'oliën', 'smering'],
    },
    columns: {
      place: { kind: 'text', label: 'Place' },
      lubricant: { kind: 'text', label: 'Lubricant' },
      amount: { kind: 'text', label: 'Amount', optional: true },
      note: { kind: 'text', label: 'Note', optional: true },
    },
  },
  depths: {
    label: 'Depths',
    line: 'depth',
    meaning: 'Each gearing of a wheel and a pinion: their pitch diameters and the distance between their centres.',
    names: {
      en: ['depths', 'depthing', 'gearing'],
      fr: ['engrenages', 'engrènements'],
      de: ['Eingriffe', 'Verzahnungen'],
      nl: ['ingrijpingen', 'vertandingen'],
    },
    columns: {
      driver: { kind: 'text', label: 'Driver' },
      driven: { kind: 'text', label: 'Driven' },
      driverPitchMm: { kind: 'length', label: 'Driver pitch diameter', optional: true },
      drivenPitchMm: { kind: 'length', label: 'Driven pitch diameter', optional: true },
      centreDistanceMm: { kind: 'length', label: 'Centre distance', optional: true },
    },
  },
  parts: {
    label: 'Parts',
    line: 'part',
    meaning: 'Parts with the numbers under which they are ordered.',
    names: {
      en: ['parts', 'parts list', 'material'],
      fr: ['fournitures', 'liste des fournitures', 'pièces'],
      de: ['Bestandteile', 'Ersatzteile', 'Furnituren'],
      nl: ['onderdelen', 'fournituren'],
    },
    columns: {
      part: { kind: 'text', label: 'Part' },
      number: { kind: 'text', label: 'Number', optional: true },
      note: { kind: 'text', label: 'Note', optional: true },
    },
  },
  stripOrder: {
    label: 'Strip order',
    line: 'step',
    meaning:
      'What must come off before what when the movement is taken down, with a caution where a part can be broken or can fly off.',
    names: {
      en: ['strip order', 'order of dismantling', 'taking down'],
      fr: ['ordre de démontage', 'démontage'],
      de: ['Zerlegefolge', 'Reihenfolge des Zerlegens'],
      nl: ['demontagevolgorde', 'volgorde van demonteren'],
    },
    columns: {
      part: { kind: 'text', label: 'Part' },
      after: { kind: 'texts', label: 'After', optional: true },
      caution: { kind: 'text', label: 'Caution', optional: true },
    },
  },
} as const satisfies Record<string, ListDef>

export type ListKey = keyof typeof listFields
