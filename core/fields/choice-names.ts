import type { Names } from './field.ts'

/**
 * What handbooks and suppliers' lists call the choices of a field, beside the label. One word stands for one choice alone:
 * what may be two of them (`brace`, `Zentralsekunde`, `T`) is left to the reader of the book.
 */
type ChoiceNames<C extends string> = Readonly<Record<C, Names>>

const other: Names = { en: ['another'], fr: ['autre'], de: ['andere', 'anderes', 'sonstige'], nl: ['andere', 'anders'] }

export const springEndNames = {
  hole: {
    en: ['hole end', 'with hole'],
    fr: ['trou', 'à trou', 'bout à trou'],
    de: ['Loch', 'Lochende', 'gelocht', 'mit Loch'],
    nl: ['gat', 'met gat', 'gateinde'],
  },
  'hole-with-brace': {
    en: ['hole and brace', 'braced hole'],
    fr: ['trou avec bride fixe', 'bride fixe', 'trou et bride'],
    de: ['Loch mit Zaum', 'Loch mit Bügel', 'fester Zaum'],
    nl: ['gat met beugel', 'vaste beugel'],
  },
  tongue: {
    en: ['tongue end', 'hook', 'hooked', 'hooked end', 'bent end'],
    fr: ['crochet', 'à crochet', 'languette', 'bout replié'],
    de: ['Haken', 'Hakenende', 'Zunge', 'Lasche'],
    nl: ['haak', 'haakje', 'tong', 'haakeinde'],
  },
  'double-brace': {
    en: ['double brace end', 'pivoted brace'],
    fr: ['double bride', 'bride à pivots', 'bride à deux pivots'],
    de: ['Doppelzaum', 'Zaum mit Zapfen', 'Zapfenzaum', 'Pendelzaum'],
    nl: ['dubbele beugel', 'beugel met tappen'],
  },
  't-end': {
    en: ['T end', 'tee end'],
    fr: ['bout en T', 'extrémité en T', 'en T'],
    de: ['T-Ende', 'T-förmig'],
    nl: ['T-einde', 'T-eind', 'T-vormig'],
  },
  swivel: {
    en: ['swivel end', 'swivelling'],
    fr: ['pivotant', 'bout pivotant'],
    de: ['Drehende', 'drehbar', 'drehbares Ende'],
    nl: ['draaibaar', 'draaibaar einde'],
  },
  'slipping-bridle': {
    en: ['bridle', 'slip bridle', 'slipping'],
    fr: ['bride glissante', 'à bride glissante', 'bride'],
    de: ['Gleitzaum', 'Zaum', 'Schleppfeder', 'Rutschzaum'],
    nl: ['sleepveer', 'slepende beugel', 'glijbeugel'],
  },
  loop: {
    en: ['loop end', 'looped'],
    fr: ['boucle', 'œil', 'œillet'],
    de: ['Öse', 'Schlaufe', 'Schlinge'],
    nl: ['oog', 'lus'],
  },
  other,
} as const satisfies ChoiceNames<string>

export const springMaterialNames = {
  'carbon-steel': {
    en: ['steel', 'blue steel', 'blued steel', 'spring steel'],
    fr: ['acier', 'acier au carbone', 'acier bleui', 'acier bleu', 'acier trempé'],
    de: ['Stahl', 'Kohlenstoffstahl', 'Federstahl', 'Blaustahl', 'gebläuter Stahl'],
    nl: ['staal', 'koolstofstaal', 'verenstaal', 'blauw staal'],
  },
  stainless: {
    en: ['stainless steel', 'rustless'],
    fr: ['inox', 'inoxydable', 'acier inoxydable', 'acier inox'],
    de: ['rostfrei', 'rostfreier Stahl', 'Edelstahl', 'nichtrostend'],
    nl: ['roestvrij', 'roestvrij staal', 'roestvast staal', 'rvs'],
  },
  'cobalt-nickel': {
    en: ['cobalt-nickel alloy', 'cobalt alloy', 'Co-Ni'],
    fr: ['alliage cobalt-nickel', 'alliage de cobalt'],
    de: ['Kobalt-Nickel', 'Kobalt-Nickel-Legierung', 'Kobaltlegierung'],
    nl: ['kobalt-nikkel', 'kobaltlegering'],
  },
  other,
} as const satisfies ChoiceNames<string>

export const escapementNames = {
  lever: {
    en: ['lever escapement', 'jewelled lever', 'detached lever'],
    fr: ['ancre', 'à ancre', 'échappement à ancre'],
    de: ['Anker', 'Ankerhemmung', 'Ankergang'],
    nl: ['anker', 'ankergang', 'ankerechappement'],
  },
  'pin-lever': {
    en: ['pin pallet', 'pin lever escapement'],
    fr: ['ancre à goupilles', 'ancre à chevilles', 'échappement à goupilles'],
    de: ['Stiftanker', 'Stiftankerhemmung', 'Stiftankergang'],
    nl: ['stiftanker', 'pennenanker', 'stiftankergang'],
  },
  cylinder: {
    en: ['cylinder escapement', 'horizontal escapement'],
    fr: ['cylindre', 'à cylindre', 'échappement à cylindre'],
    de: ['Zylinder', 'Cylinder', 'Zylinderhemmung', 'Zylindergang'],
    nl: ['cilinder', 'cilindergang'],
  },
  duplex: {
    en: ['duplex escapement'],
    fr: ['échappement duplex'],
    de: ['Duplexhemmung', 'Duplexgang'],
    nl: ['duplexgang'],
  },
  detent: {
    en: ['detent escapement', 'chronometer', 'chronometer escapement'],
    fr: ['détente', 'à détente', 'échappement à détente'],
    de: ['Chronometerhemmung', 'Chronometergang', 'Wippenchronometer', 'Federchronometer'],
    nl: ['chronometergang', 'chronometerechappement'],
  },
  verge: {
    en: ['verge escapement', 'crown-wheel escapement'],
    fr: ['à verge', 'échappement à verge', 'roue de rencontre', 'à roue de rencontre'],
    de: ['Spindel', 'Spindelhemmung', 'Spindelgang'],
    nl: ['spil', 'spillegang', 'spilgang'],
  },
  other,
} as const satisfies ChoiceNames<string>

export const windingNames = {
  key: {
    en: ['key-wind', 'key winding'],
    fr: ['clé', 'clef', 'à clé', 'à clef'],
    de: ['Schlüssel', 'Schlüsselaufzug'],
    nl: ['sleutel', 'sleutelopwinding'],
  },
  stem: {
    en: ['stem-wind', 'crown', 'keyless', 'pendant'],
    fr: ['tige', 'couronne', 'à couronne', 'remontoir au pendant'],
    de: ['Krone', 'Kronenaufzug', 'Bügelaufzug'],
    nl: ['kroon', 'kroonopwinding'],
  },
  'self-winding': {
    en: ['automatic', 'self-wind'],
    fr: ['automatique', 'remontage automatique', 'auto'],
    de: ['Automatik', 'automatisch', 'automatischer Aufzug', 'Selbstaufzug'],
    nl: ['automatisch', 'automaat', 'zelfopwindend'],
  },
} as const satisfies ChoiceNames<string>

export const settingNames = {
  key: {
    en: ['key-set', 'key setting'],
    fr: ['clé', 'clef', 'à clé', 'à clef'],
    de: ['Schlüssel', 'Schlüsselstellung'],
    nl: ['sleutel', 'met sleutel'],
  },
  pin: {
    en: ['pin-set', 'pin setting', 'nail-set', 'push piece'],
    fr: ['poussette', 'à poussette', 'olivette'],
    de: ['Drücker', 'Drückerstellung', 'Stift'],
    nl: ['drukker', 'drukpen', 'stift'],
  },
  lever: { en: ['lever-set', 'lever setting'], fr: ['levier', 'à levier'], de: ['Hebel'], nl: ['hefboom'] },
  stem: {
    en: ['stem-set', 'pendant-set', 'crown'],
    fr: ['tige', 'couronne', 'à tirette'],
    de: ['Krone', 'Kronenstellung'],
    nl: ['kroon'],
  },
} as const satisfies ChoiceNames<string>

export const balanceSpringNames = {
  flat: {
    en: ['flat spiral'],
    fr: ['plat', 'spiral plat'],
    de: ['flach', 'Flachspirale'],
    nl: ['vlak', 'vlakke spiraal'],
  },
  overcoil: {
    en: ['raised', 'with overcoil'],
    fr: ['courbe terminale', 'à courbe terminale', 'spiral coudé'],
    de: ['Endkurve', 'hochgebogen', 'hochgebogene Spirale'],
    nl: ['eindkromme', 'opgebogen'],
  },
  helical: {
    en: ['helix', 'cylindrical'],
    fr: ['cylindrique', 'hélicoïdal', 'spiral cylindrique'],
    de: ['zylindrisch', 'Zylinderspirale'],
    nl: ['cilindrisch', 'cilindrische spiraal'],
  },
} as const satisfies ChoiceNames<string>

export const shapeNames = {
  round: { en: ['circular'], fr: ['rond', 'ronde'], de: ['rund'], nl: ['rond'] },
  oval: { en: ['oval-shaped'], fr: ['ovale'], de: ['ovalförmig'], nl: ['ovaal'] },
  tonneau: { en: ['barrel-shaped'], fr: ['forme tonneau'], de: ['Tonneauform', 'tonnenförmig'], nl: ['tonvormig'] },
  rectangular: {
    en: ['rectangle', 'oblong'],
    fr: ['rectangulaire', 'rectangle'],
    de: ['rechteckig', 'Rechteck'],
    nl: ['rechthoekig', 'rechthoek'],
  },
  baguette: { en: ['stick'], fr: ['forme baguette'], de: ['stabförmig', 'Stabform'], nl: ['staafvormig'] },
  other,
} as const satisfies ChoiceNames<string>

export const secondsDisplayNames = {
  none: {
    en: ['no seconds', 'without seconds'],
    fr: ['sans', 'sans seconde', 'aucune'],
    de: ['ohne', 'ohne Sekunde', 'keine'],
    nl: ['geen', 'zonder', 'zonder seconde'],
  },
  small: {
    en: ['subsidiary seconds', 'sub-seconds'],
    fr: ['petite seconde', 'petite'],
    de: ['kleine Sekunde', 'klein'],
    nl: ['kleine seconde', 'klein'],
  },
  'centre-direct': {
    en: ['direct centre seconds', 'direct sweep seconds'],
    fr: ['seconde au centre directe', 'seconde directe au centre'],
    de: ['direkte Zentralsekunde', 'Zentralsekunde direkt'],
    nl: ['directe centrale seconde', 'centrale seconde direct'],
  },
  'centre-indirect': {
    en: ['indirect centre seconds', 'indirect sweep seconds'],
    fr: ['seconde au centre indirecte', 'seconde indirecte au centre'],
    de: ['indirekte Zentralsekunde', 'Zentralsekunde indirekt'],
    nl: ['indirecte centrale seconde', 'centrale seconde indirect'],
  },
} as const satisfies ChoiceNames<string>
