import { type OilingPlace, type OilingPlaceDef, oilingPlaces } from '../fields/oiling-places.ts'
import type { CaliberValues, OilingPoint } from '../record/caliber.ts'
import { isDry, oilingPlacesOf } from '../record/oiling-places-of.ts'
import { defineProof } from './define-proof.ts'
import type { WorkingStep } from './proof.ts'

const used = [
  'escapement',
  'winding',
  'springEnd',
  'secondsDisplay',
  'intermediateWheel',
  'centreWheel',
  'thirdWheel',
  'fourthWheel',
  'fifthWheel',
  'sweepPinion',
] as const
type Used = Pick<CaliberValues, (typeof used)[number]>

const rows: Readonly<Record<OilingPlace, OilingPlaceDef>> = oilingPlaces
const allPlaces = Object.keys(oilingPlaces) as readonly OilingPlace[]

/** When a place that is wanted is there to be oiled; the others are in every movement. */
const isThere: Partial<Readonly<Record<OilingPlace, (values: Used) => boolean>>> = {
  barrelWall: ({ springEnd }) => springEnd === 'slipping-bridle',
  intermediatePivots: ({ intermediateWheel }) => intermediateWheel !== undefined,
  centrePivots: ({ centreWheel }) => centreWheel !== undefined,
  thirdPivots: ({ thirdWheel }) => thirdWheel !== undefined,
  fourthPivots: ({ fourthWheel }) => fourthWheel !== undefined,
  fifthPivots: ({ fifthWheel }) => fifthWheel !== undefined,
  sweepPivots: ({ secondsDisplay, sweepPinion }) => secondsDisplay === 'centre-indirect' || sweepPinion !== undefined,
  palletFaces: ({ escapement }) =>
    escapement === 'lever' || escapement === 'pin-lever' || escapement === 'cylinder' || escapement === 'verge',
  keylessWork: ({ winding }) => winding === 'stem' || winding === 'self-winding',
}

/** Whether oil belongs in a place of this caliber: the teeth of a detent escapement run dry. */
const oilOf = (place: OilingPlace, { escapement }: Used): OilingPlaceDef['oil'] =>
  place === 'palletFaces' && escapement === 'detent' ? 'never' : rows[place].oil

interface Said {
  readonly line: OilingPoint
  readonly dry: boolean
}

/** What the list says of each place; where several lines name it, one that oils it. */
const saidOf = (lines: readonly OilingPoint[]) => {
  const said = new Map<OilingPlace, Said>()
  const unknown: OilingPoint[] = []
  for (const line of lines) {
    const dry = isDry(line.lubricant)
    const places = oilingPlacesOf(line.place)
    if (places.length === 0) unknown.push(line)
    for (const place of places) if (said.get(place)?.dry !== false) said.set(place, { line, dry })
  }
  return { said, unknown }
}

const asWritten = ({ lubricant, amount }: OilingPoint): string => (amount ? `${lubricant}, ${amount}` : lubricant)

/** Every place that turns or rubs is oiled, or is left dry by rule. */
export const everyPivotIsOiledOrLeftDry = defineProof({
  id: 'every-pivot-is-oiled-or-left-dry',
  title: 'Every pivot is oiled or left dry',
  meaning:
    'Each place that turns or rubs under load stands in the list of oiling, and what is left dry by rule is not oiled; a place left out wears, and oil on the balance spring stops the watch.',
  needs: [],
  uses: used,
  lists: ['lubrication'],
  tolerance: {
    allows:
      'every usual place listed, oiled or marked as dry; a place left out or differently treated is doubtful, and oil on the ' +
      'balance spring or on the teeth of a detent escapement is wrong',
    why:
      'The maker’s own specification comes first, and makers differ over pallet pivots, fork and train teeth, so those are ' +
      'only doubtful. Coils of a balance spring that stick together change the rate by minutes, and a detent escapement is ' +
      'built to run without oil.',
  },
  source: 'W. T. Lewis, Friction, Lubrication and the Lubricants in Horology, 1896, art. 48–60, 80; common practice',
  validity:
    'Watches. Arbors whose wheel is not stated, and keyless work where the winding is not, are not asked for. Mainsprings ' +
    'may be marked as dry, for some are sold treated.',
  reasons: ['oiling-complete', 'oiling-harms', 'oiling-left-dry', 'oiling-left-out', 'oiling-unusual'],
  judge: (values, { lists }) => {
    const { said, unknown } = saidOf(lists.lubrication)
    const working: WorkingStep[] = []
    const harms: OilingPlace[] = []
    const leftDry: OilingPlace[] = []
    const leftOut: OilingPlace[] = []
    const unusual: OilingPlace[] = []
    let wanted = 0
    for (const place of allPlaces) {
      const oil = oilOf(place, values)
      const known = said.get(place)
      const asked = oil === 'wanted' && (isThere[place]?.(values) ?? true)
      if (asked) wanted += 1
      if (known === undefined) {
        if (!asked) continue
        leftOut.push(place)
      } else if (known.dry) {
        if (asked && !rows[place].mayBeDry) leftDry.push(place)
      } else if (oil === 'never') harms.push(place)
      else if (oil === 'seldom') unusual.push(place)
      working.push({ formula: rows[place].label, where: {}, gives: known ? asWritten(known.line) : 'not listed' })
    }
    for (const line of unknown) working.push({ formula: line.place, where: {}, gives: asWritten(line) })

    const faults = [
      ['oiling-harms', harms],
      ['oiling-left-dry', leftDry],
      ['oiling-left-out', leftOut],
      ['oiling-unusual', unusual],
    ] as const
    const [reason, places] = faults.find(([, found]) => found.length > 0) ?? (['oiling-complete', []] as const)
    const found = wanted - leftOut.length - leftDry.length
    return {
      outcome: reason === 'oiling-complete' ? 'agrees' : reason === 'oiling-harms' ? 'disagrees' : 'doubtful',
      stated: wanted,
      found,
      unit: 'places',
      difference: found - wanted,
      allowed: 0,
      working,
      reason,
      details: { places: places.map((place) => rows[place].label).join('; ') },
    }
  },
})
