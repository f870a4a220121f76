import type { Language, Names } from './field.ts'

/** Where a name of a part was found in print. A name that none of these backs is from memory: common practice. */
export const partNameSources = {
  kindler: 'Kindler, Die Uhren (Project Gutenberg 50244)',
  chemnitz: 'the German-English word list of TU Chemnitz',
  biekorf: 'Biekorf 17 (1906), on the parts of a watch',
  'tower-clocks': 'a Dutch glossary of tower clocks',
  encyclopaedias: 'two encyclopaedias of watchmaking on the net',
  iso: 'the titles of ISO 6426-2:2002',
} as const

export interface PartDef {
  readonly label: string
  readonly meaning: string
  readonly names: Names
  /** The languages whose name was found in print, and where. */
  readonly found?: Readonly<Partial<Record<Language, readonly (keyof typeof partNameSources)[]>>>
}

/** The parts of a movement, and the words around them, that are no field of a caliber. */
export const partNames = {
  movement: {
    label: 'Movement',
    meaning: 'The whole works of a watch without case, dial and hands.',
    names: {
      en: ['movement', 'calibre'],
      fr: ['mouvement', 'calibre'],
      de: ['Uhrwerk', 'Kaliber'],
      nl: ['uurwerk', 'kaliber'],
    },
    found: { de: ['kindler'] },
  },
  mainPlate: {
    label: 'Main plate',
    meaning: 'The plate that carries the bridges and in which one end of every arbor turns.',
    names: {
      en: ['main plate', 'bottom plate', 'pillar plate'],
      fr: ['platine'],
      de: ['Platine', 'Werkplatte'],
      nl: ['platine', 'grondplaat', 'stelplaat'],
    },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  bridge: {
    label: 'Bridge',
    meaning: 'A piece screwed to the plate at both ends, in which the other ends of the arbors turn.',
    names: { en: ['bridge'], fr: ['pont'], de: ['Brücke'], nl: ['brug'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  cock: {
    label: 'Cock',
    meaning: 'A bridge that is screwed down at one end only.',
    names: { en: ['cock'], fr: ['coq', 'pont à un pied'], de: ['Kloben'], nl: ['kloof', 'brug'] },
  },
  balanceCock: {
    label: 'Balance cock',
    meaning: 'The cock that holds the upper pivot of the balance, the stud and the regulator.',
    names: { en: ['balance cock'], fr: ['coq', 'pont de balancier'], de: ['Unruhkloben'], nl: ['balansbrug'] },
  },
  barrel: {
    label: 'Barrel',
    meaning: 'The toothed drum in which the mainspring lies and which drives the train.',
    names: { en: ['barrel', 'going barrel'], fr: ['barillet'], de: ['Federhaus'], nl: ['veerton', 'veerhuis'] },
    found: { de: ['kindler', 'chemnitz'], fr: ['encyclopaedias'] },
  },
  barrelCover: {
    label: 'Barrel cover',
    meaning: 'The lid snapped into the barrel over the mainspring.',
    names: {
      en: ['barrel cover', 'barrel lid'],
      fr: ['couvercle de barillet'],
      de: ['Federhausdeckel'],
      nl: ['veertondeksel'],
    },
  },
  mainspring: {
    label: 'Mainspring',
    meaning: 'The coiled band that drives the movement. Let it down before the barrel bridge comes off.',
    names: {
      en: ['mainspring'],
      fr: ['ressort moteur', 'ressort de barillet'],
      de: ['Zugfeder', 'Aufzugfeder'],
      nl: ['trekveer'],
    },
    found: { de: ['chemnitz'] },
  },
  bridle: {
    label: 'Bridle',
    meaning:
      'The loose outer piece by which the mainspring of a self-winding watch slips along the wall of the barrel.',
    names: {
      en: ['bridle', 'slipping spring'],
      fr: ['bride', 'bride glissante'],
      de: ['Zaum', 'Gleitzaum'],
      nl: ['sleepveer'],
    },
  },
  ratchetWheel: {
    label: 'Ratchet wheel',
    meaning: 'The wheel on the barrel arbor that the click keeps from turning back.',
    names: { en: ['ratchet wheel'], fr: ['rochet'], de: ['Sperrrad'], nl: ['sperrad', 'palrad'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  click: {
    label: 'Click',
    meaning: 'The pawl that lies in the ratchet wheel and holds the mainspring wound.',
    names: { en: ['click', 'pawl'], fr: ['cliquet'], de: ['Sperrkegel'], nl: ['pal', 'klik'] },
    found: { de: ['kindler'] },
  },
  clickSpring: {
    label: 'Click spring',
    meaning: 'The spring that presses the click into the ratchet wheel. It flies off: mind your eyes.',
    names: { en: ['click spring'], fr: ['ressort de cliquet'], de: ['Sperrfeder'], nl: ['palveer'] },
    found: { nl: ['biekorf'] },
  },
  crownWheel: {
    label: 'Crown wheel',
    meaning:
      'The wheel under the barrel bridge by which the winding pinion turns the ratchet wheel; in a verge watch, the escape wheel with upright teeth.',
    names: { en: ['crown wheel'], fr: ['roue de couronne'], de: ['Kronrad'], nl: ['kroonrad'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  windingPinion: {
    label: 'Winding pinion',
    meaning: 'The pinion loose on the stem that drives the crown wheel.',
    names: { en: ['winding pinion'], fr: ['pignon de remontoir'], de: ['Kupplungstrieb'], nl: ['opwindrondsel'] },
  },
  slidingPinion: {
    label: 'Sliding pinion',
    meaning: 'The pinion that slides on the square of the stem: one way it winds, the other it sets the hands.',
    names: {
      en: ['sliding pinion', 'clutch wheel', 'castle wheel'],
      fr: ['pignon coulant'],
      de: ['Schiebetrieb'],
      nl: ['schuifrondsel'],
    },
  },
  windingStem: {
    label: 'Winding stem',
    meaning: 'The rod that carries the crown, by which the watch is wound and set.',
    names: { en: ['winding stem', 'stem'], fr: ['tige de remontoir'], de: ['Aufzugwelle'], nl: ['opwindas'] },
  },
  crown: {
    label: 'Crown',
    meaning: 'The button on the stem.',
    names: { en: ['crown', 'button'], fr: ['couronne'], de: ['Krone', 'Aufzugkrone'], nl: ['kroon'] },
    found: { de: ['chemnitz'] },
  },
  settingLever: {
    label: 'Setting lever',
    meaning: 'The lever in the groove of the stem that goes with it when it is pulled, and moves the yoke.',
    names: { en: ['setting lever', 'detent'], fr: ['tirette'], de: ['Winkelhebel'], nl: ['trekker'] },
  },
  yoke: {
    label: 'Yoke',
    meaning: 'The lever that moves the sliding pinion along the stem.',
    names: { en: ['yoke', 'clutch lever'], fr: ['bascule'], de: ['Wippe'], nl: ['wip'] },
    found: { de: ['chemnitz'] },
  },
  settingWheel: {
    label: 'Setting wheel',
    meaning: 'The wheel between sliding pinion and minute wheel when the hands are set.',
    names: {
      en: ['setting wheel', 'intermediate setting wheel'],
      fr: ['renvoi'],
      de: ['Zeigerstellrad'],
      nl: ['stelwiel'],
    },
  },
  goingTrain: {
    label: 'Going train',
    meaning: 'The wheels and pinions from the barrel to the escape wheel.',
    names: {
      en: ['going train'],
      fr: ['rouage de finissage', 'rouage'],
      de: ['Räderwerk', 'Laufwerk'],
      nl: ['raderwerk', 'gaand werk'],
    },
    found: { de: ['kindler'], nl: ['tower-clocks'], fr: ['encyclopaedias'] },
  },
  wheel: {
    label: 'Wheel',
    meaning: 'The larger piece of a gearing, with teeth.',
    names: { en: ['wheel'], fr: ['roue'], de: ['Rad'], nl: ['rad', 'wiel'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  pinion: {
    label: 'Pinion',
    meaning: 'The smaller piece of a gearing, with leaves.',
    names: { en: ['pinion'], fr: ['pignon'], de: ['Trieb'], nl: ['rondsel'] },
    found: { de: ['kindler'] },
  },
  tooth: {
    label: 'Tooth',
    meaning: 'One of the projections of a wheel.',
    names: { en: ['tooth'], fr: ['dent'], de: ['Zahn'], nl: ['tand'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  leaf: {
    label: 'Leaf',
    meaning: 'One of the projections of a pinion.',
    names: { en: ['leaf'], fr: ['aile'], de: ['Triebzahn'], nl: ['rondseltand'] },
    found: { fr: ['encyclopaedias'] },
  },
  arbor: {
    label: 'Arbor',
    meaning: 'The axle of a wheel; of the balance and of the pallets it is called staff.',
    names: { en: ['arbor', 'staff', 'axle'], fr: ['arbre', 'axe', 'tige'], de: ['Welle'], nl: ['as'] },
    found: { de: ['kindler'], nl: ['tower-clocks'] },
  },
  pivot: {
    label: 'Pivot',
    meaning: 'The thin end of an arbor that turns in a hole or jewel.',
    names: { en: ['pivot'], fr: ['pivot'], de: ['Zapfen'], nl: ['tap'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  greatWheel: {
    label: 'Great wheel',
    meaning: 'The first wheel of a train; in a going barrel, the toothing of the barrel itself.',
    names: {
      en: ['great wheel', 'first wheel'],
      fr: ['grande roue', 'roue de barillet'],
      de: ['Bodenrad', 'Walzenrad'],
      nl: ['bodemrad'],
    },
    found: { de: ['kindler'] },
  },
  motionWork: {
    label: 'Motion work',
    meaning: 'Cannon pinion, minute wheel and hour wheel: what takes the hour hand from the minute hand.',
    names: { en: ['motion work', 'dial train'], fr: ['minuterie'], de: ['Zeigerwerk'], nl: ['wijzerwerk'] },
    found: { de: ['kindler'] },
  },
  leverEscapement: {
    label: 'Lever escapement',
    meaning: 'The escapement in which a lever with two pallet stones goes between escape wheel and balance.',
    names: { en: ['lever escapement'], fr: ['échappement à ancre'], de: ['Ankerhemmung'], nl: ['ankergang'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  cylinderEscapement: {
    label: 'Cylinder escapement',
    meaning: 'The escapement in which the teeth of the escape wheel pass through a hollow balance staff.',
    names: {
      en: ['cylinder escapement', 'horizontal escapement'],
      fr: ['échappement à cylindre'],
      de: ['Zylinderhemmung'],
      nl: ['cilindergang'],
    },
    found: { de: ['kindler'] },
  },
  vergeEscapement: {
    label: 'Verge escapement',
    meaning: 'The old escapement with a crown-shaped wheel and two flags on the balance staff.',
    names: {
      en: ['verge escapement'],
      fr: ['échappement à verge', 'échappement à roue de rencontre'],
      de: ['Spindelhemmung', 'Spindelgang'],
      nl: ['spillegang'],
    },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  detentEscapement: {
    label: 'Detent escapement',
    meaning: 'The escapement of marine chronometers, which gives an impulse at every second vibration.',
    names: {
      en: ['detent escapement', 'chronometer escapement'],
      fr: ['échappement à détente'],
      de: ['Chronometerhemmung'],
      nl: ['chronometergang'],
    },
    found: { de: ['kindler'] },
  },
  palletLever: {
    label: 'Pallet lever',
    meaning: 'The lever that the escape wheel rocks to and fro, and that gives the balance its impulse.',
    names: { en: ['pallet lever', 'lever', 'pallets'], fr: ['ancre'], de: ['Anker'], nl: ['anker'] },
    found: { de: ['kindler'], nl: ['biekorf'], fr: ['encyclopaedias'] },
  },
  palletFork: {
    label: 'Pallet fork',
    meaning: 'The end of the lever that takes the impulse pin.',
    names: { en: ['pallet fork', 'fork'], fr: ['fourchette'], de: ['Ankergabel', 'Gabel'], nl: ['ankervork'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  palletStone: {
    label: 'Pallet stone',
    meaning: 'One of the two stones of the lever on which the teeth of the escape wheel lie and push.',
    names: {
      en: ['pallet stone', 'pallet jewel'],
      fr: ['palette', 'levée'],
      de: ['Palette', 'Ankerstein'],
      nl: ['ankersteen'],
    },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  palletStaff: {
    label: 'Pallet staff',
    meaning: 'The arbor of the lever.',
    names: { en: ['pallet staff', 'pallet arbor'], fr: ["tige d'ancre"], de: ['Ankerwelle'], nl: ['ankeras'] },
  },
  guardPin: {
    label: 'Guard pin',
    meaning: 'The pin of the lever that keeps it from going over to the wrong side of the roller.',
    names: { en: ['guard pin', 'safety dart'], fr: ['dard'], de: ['Sicherheitsstift'], nl: ['veiligheidspen'] },
  },
  bankingPins: {
    label: 'Banking pins',
    meaning: 'The two stops between which the lever moves.',
    names: {
      en: ['banking pins'],
      fr: ['goupilles de limitation'],
      de: ['Begrenzungsstifte'],
      nl: ['begrenzingspennen'],
    },
  },
  roller: {
    label: 'Roller',
    meaning: 'The disc on the balance staff that carries the impulse pin.',
    names: { en: ['roller', 'roller table'], fr: ['plateau'], de: ['Hebelscheibe', 'Rolle'], nl: ['plateau', 'rol'] },
    found: { de: ['kindler'] },
  },
  impulsePin: {
    label: 'Impulse pin',
    meaning: 'The pin or stone of the roller that unlocks the lever and takes its impulse.',
    names: {
      en: ['impulse pin', 'impulse jewel', 'ruby pin'],
      fr: ['cheville de plateau', 'ellipse'],
      de: ['Hebelstein', 'Ellipse'],
      nl: ['ellips'],
    },
  },
  balance: {
    label: 'Balance',
    meaning: 'The wheel that swings to and fro and keeps the time.',
    names: {
      en: ['balance', 'balance wheel'],
      fr: ['balancier'],
      de: ['Unruh', 'Unruhe'],
      nl: ['onrust', 'balans', 'vliegwiel'],
    },
    found: { de: ['kindler', 'chemnitz'], nl: ['biekorf'] },
  },
  balanceStaff: {
    label: 'Balance staff',
    meaning: 'The arbor of the balance, with the finest pivots of the watch.',
    names: { en: ['balance staff'], fr: ['axe de balancier'], de: ['Unruhwelle'], nl: ['balansas'] },
  },
  overcoil: {
    label: 'Overcoil',
    meaning: 'The outer end of a balance spring bent up and inwards over the coils.',
    names: { en: ['overcoil'], fr: ['courbe terminale'], de: ['Endkurve', 'hochgebogene Spirale'], nl: ['eindkromme'] },
  },
  collet: {
    label: 'Collet',
    meaning: 'The small ring on the balance staff in which the inner end of the balance spring is pinned.',
    names: { en: ['collet'], fr: ['virole'], de: ['Spiralrolle'], nl: ['klosje'] },
    found: { nl: ['biekorf'] },
  },
  stud: {
    label: 'Stud',
    meaning: 'The piece in the balance cock in which the outer end of the balance spring is pinned.',
    names: { en: ['stud'], fr: ['piton'], de: ['Spiralklötzchen'], nl: ['stiftblokje', 'piton'] },
  },
  regulator: {
    label: 'Regulator',
    meaning: 'The lever whose two pins make the balance spring longer or shorter, and the watch slower or faster.',
    names: { en: ['regulator', 'index'], fr: ['raquette'], de: ['Rücker'], nl: ['regelaar'] },
  },
  curbPins: {
    label: 'Curb pins',
    meaning: 'The two pins of the regulator between which the balance spring plays.',
    names: {
      en: ['curb pins', 'regulator pins'],
      fr: ['goupilles de raquette'],
      de: ['Rückerstifte'],
      nl: ['kompassleutel'],
    },
    found: { nl: ['biekorf'] },
  },
  jewel: {
    label: 'Jewel',
    meaning: 'A pierced or flat stone in which a pivot turns or on which it rests.',
    names: { en: ['jewel'], fr: ['pierre', 'rubis'], de: ['Stein', 'Rubin'], nl: ['steen', 'robijn'] },
    found: { de: ['chemnitz'] },
  },
  holeJewel: {
    label: 'Hole jewel',
    meaning: 'A pierced jewel in which a pivot turns.',
    names: { en: ['hole jewel'], fr: ['pierre percée'], de: ['Lochstein'], nl: ['gatsteen', 'steengat'] },
    found: { de: ['chemnitz'], nl: ['biekorf'] },
  },
  endstone: {
    label: 'Endstone',
    meaning: 'A flat jewel on which the end of a pivot rests.',
    names: { en: ['endstone', 'cap jewel'], fr: ['contre-pivot'], de: ['Deckstein'], nl: ['deksteen'] },
    found: { de: ['chemnitz'], nl: ['biekorf'] },
  },
  jewelSetting: {
    label: 'Jewel setting',
    meaning: 'The metal ring in which a jewel is rubbed in.',
    names: { en: ['setting', 'chaton'], fr: ['chaton'], de: ['Chaton', 'Steinfassung'], nl: ['vatting'] },
    found: { nl: ['biekorf'] },
  },
  shockProtection: {
    label: 'Shock protection',
    meaning: 'Sprung jewels that give way when the watch is dropped, so that the balance pivots do not break.',
    names: { en: ['shock protection'], fr: ['pare-chocs'], de: ['Stoßsicherung'], nl: ['schokbreker'] },
  },
  fusee: {
    label: 'Fusee',
    meaning:
      'The grooved cone from which the chain is drawn, so that the pull on the train stays even while the mainspring runs down.',
    names: { en: ['fusee'], fr: ['fusée'], de: ['Schnecke'], nl: ['snek'] },
    found: { de: ['kindler', 'chemnitz'], nl: ['biekorf'] },
  },
  fuseeChain: {
    label: 'Fusee chain',
    meaning: 'The fine chain from the barrel to the fusee.',
    names: { en: ['fusee chain', 'chain'], fr: ['chaîne', 'chaîne de fusée'], de: ['Kette'], nl: ['ketting'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  stopWork: {
    label: 'Stop-work',
    meaning: 'Finger and star wheel that let the barrel make only its middle turns.',
    names: { en: ['stop-work'], fr: ['arrêtage'], de: ['Stellung'], nl: ['opwindbegrenzing'] },
    found: { de: ['kindler'] },
  },
  verge: {
    label: 'Verge',
    meaning: 'The balance staff with two flags of the verge escapement.',
    names: { en: ['verge'], fr: ['verge'], de: ['Spindel'], nl: ['spil'] },
    found: { de: ['kindler'], nl: ['biekorf'] },
  },
  screw: {
    label: 'Screw',
    meaning: 'What holds bridges and cocks on the plate.',
    names: { en: ['screw'], fr: ['vis'], de: ['Schraube'], nl: ['schroef', 'vijs'] },
    found: { nl: ['biekorf'] },
  },
  dial: {
    label: 'Dial',
    meaning: 'The face on which the hands show the time.',
    names: { en: ['dial'], fr: ['cadran'], de: ['Zifferblatt'], nl: ['wijzerplaat'] },
    found: { de: ['kindler'], nl: ['tower-clocks'] },
  },
  hand: {
    label: 'Hand',
    meaning: 'One of the pointers over the dial.',
    names: { en: ['hand'], fr: ['aiguille'], de: ['Zeiger'], nl: ['wijzer'] },
    found: { de: ['kindler'], fr: ['encyclopaedias'] },
  },
  rotor: {
    label: 'Rotor',
    meaning: 'The swinging weight that winds a self-winding watch.',
    names: {
      en: ['rotor', 'oscillating weight'],
      fr: ['masse oscillante', 'rotor'],
      de: ['Rotor', 'Schwungmasse'],
      nl: ['rotor'],
    },
  },
  endShake: {
    label: 'End-shake',
    meaning: 'The play of an arbor along its length.',
    names: {
      en: ['end-shake', 'endshake'],
      fr: ['ébat en hauteur', 'jeu axial'],
      de: ['Höhenspiel', 'Axialspiel'],
      nl: ['hoogtespeling'],
    },
  },
  sideShake: {
    label: 'Side-shake',
    meaning: 'The play of a pivot across its hole.',
    names: {
      en: ['side-shake', 'sideshake'],
      fr: ['jeu radial', 'ébat en largeur'],
      de: ['Seitenspiel', 'Radialspiel'],
      nl: ['zijspeling'],
    },
  },
  vibration: {
    label: 'Vibration',
    meaning: 'One swing of the balance from one side to the other: half an oscillation, one tick.',
    names: { en: ['vibration', 'beat'], fr: ['alternance'], de: ['Halbschwingung'], nl: ['halve trilling', 'slag'] },
    found: { fr: ['iso'] },
  },
  oscillation: {
    label: 'Oscillation',
    meaning: 'One swing of the balance there and back: two vibrations.',
    names: { en: ['oscillation'], fr: ['oscillation'], de: ['Schwingung'], nl: ['trilling'] },
    found: { de: ['kindler'], fr: ['iso'] },
  },
  amplitude: {
    label: 'Amplitude',
    meaning: 'How far the balance swings from its rest to one side, in degrees.',
    names: {
      en: ['amplitude', 'arc'],
      fr: ['amplitude'],
      de: ['Schwingungsweite', 'Amplitude'],
      nl: ['slingerwijdte', 'amplitude'],
    },
  },
  rate: {
    label: 'Rate',
    meaning: 'How much a watch gains or loses in a day.',
    names: {
      en: ['rate', 'daily rate'],
      fr: ['marche', 'marche diurne'],
      de: ['Gang', 'täglicher Gang'],
      nl: ['gang', 'dagelijkse gang'],
    },
  },
} as const satisfies Record<string, PartDef>

export type PartKey = keyof typeof partNames
