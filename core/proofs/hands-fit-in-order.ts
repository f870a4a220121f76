import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import type { CaliberValues } from '../record/caliber.ts'
import { defineProof } from './define-proof.ts'
import { exactValue, printedSpan, sideOf } from './exact-value.ts'

type HandKey = 'hourHandMm' | 'minuteHandMm' | 'secondsHandMm'

const secondsInCentre = ({ secondsDisplay }: CaliberValues): boolean =>
  secondsDisplay === 'centre-direct' || secondsDisplay === 'centre-indirect'

const outcomes = {
  'hands-in-order': 'agrees',
  'hands-close': 'doubtful',
  'seconds-hand-large': 'doubtful',
  'hands-equal': 'disagrees',
  'hands-crossed': 'disagrees',
} as const
type Reason = keyof typeof outcomes
const gravest = ['disagrees', 'doubtful', 'agrees'] as const
const gravity = (reason: Reason): number => gravest.indexOf(outcomes[reason])

/** From the sign of the difference, its sign beyond the printed rounding, and whether the order binds. */
const reasonOf = (larger: number, surely: boolean, binds: boolean): Reason => {
  if (!binds) return larger > 0 ? 'hands-in-order' : 'seconds-hand-large'
  if (larger <= 0) return larger === 0 ? 'hands-equal' : 'hands-crossed'
  return surely ? 'hands-in-order' : 'hands-close'
}

/** The holes of the hands grow from seconds to minute to hour, as their pipes stand one inside the other. */
export const handsFitInOrder = defineProof({
  id: 'hands-fit-in-order',
  title: 'Hands fit in order',
  meaning:
    'The hole of the hour hand is larger than that of the minute hand, and that larger than that of a centre seconds hand, because their pipes stand one inside the other; otherwise two figures have changed places.',
  needs: ['hourHandMm', 'minuteHandMm'],
  uses: ['secondsHandMm', 'secondsDisplay'],
  lists: [],
  tolerance: {
    allows:
      'any difference beyond half of the last digit printed on either side, or beyond the limits printed; within it is doubtful',
    why:
      'A pipe has a wall, so holes that are printed alike cannot be right, however they were rounded. A hole that is ' +
      'larger only within the rounding may be larger or not. A small seconds hand stands on a pivot of its own, so its ' +
      'order is usual but does not bind.',
  },
  source: 'common practice',
  validity:
    'Hour and minute hand on one axis. A seconds hand binds only in the centre; elsewhere, or where its place is not ' +
    'stated, a hole as large as that of the minute hand is only remarked on.',
  reasons: ['hands-in-order', 'hands-close', 'seconds-hand-large', 'hands-equal', 'hands-crossed'],
  missingBesides: (values) => {
    const { hourHandMm, minuteHandMm, secondsHandMm } = values
    const crossed = hourHandMm !== undefined && minuteHandMm !== undefined && hourHandMm <= minuteHandMm
    return secondsHandMm === undefined && secondsInCentre(values) && !crossed ? ['secondsHandMm'] : []
  },
  judge: (values, { readings }) => {
    const held = (outer: HandKey, wide: number, inner: HandKey, narrow: number, binds: boolean) => {
      const difference = plain(wide - narrow)
      const span = plain(printedSpan(readings, outer).below + printedSpan(readings, inner).above)
      const exactly = () => exactValue(readings, outer, wide).sub(exactValue(readings, inner, narrow))
      const surely = sideOf(difference, span, exactly) > 0
      const reason = reasonOf(sideOf(difference, 0, exactly), surely, binds)
      return { outer, inner, wide, narrow, difference, reason }
    }
    const { hourHandMm, minuteHandMm, secondsHandMm } = values
    const hour = held('hourHandMm', hourHandMm, 'minuteHandMm', minuteHandMm, true)
    const seconds =
      secondsHandMm === undefined
        ? []
        : [held('minuteHandMm', minuteHandMm, 'secondsHandMm', secondsHandMm, secondsInCentre(values))]
    const judged = [hour, ...seconds]
    const first = judged.reduce((worst, next) => (gravity(next.reason) < gravity(worst.reason) ? next : worst))
    return {
      outcome: outcomes[first.reason],
      stated: first.narrow,
      found: first.wide,
      unit: 'mm',
      difference: first.difference,
      allowed: null,
      get working() {
        return judged.map(({ outer, inner, wide, narrow, difference }) => ({
          formula: `${onPaper(wide)} − ${onPaper(narrow)}`,
          where: { [outer]: wide, [inner]: narrow },
          gives: difference,
        }))
      },
      reason: first.reason,
      details: { outer: first.outer, inner: first.inner },
    }
  },
})
