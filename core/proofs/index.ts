import { beatRateFollowsTrain } from './beat-rate-follows-train.ts'
import { countsAreCuttable } from './counts-are-cuttable.ts'
import { everyPivotIsOiledOrLeftDry } from './every-pivot-is-oiled-or-left-dry.ts'
import { goingHoursFollowSpring } from './going-hours-follow-spring.ts'
import { handsFitInOrder } from './hands-fit-in-order.ts'
import { hourHandFollowsMinuteHand } from './hour-hand-follows-minute-hand.ts'
import { jewelsAddUp } from './jewels-add-up.ts'
import { jewelsSitInPairs } from './jewels-sit-in-pairs.ts'
import { liftAngleSuitsEscapement } from './lift-angle-suits-escapement.ts'
import type { Proof } from './proof.ts'
import { rateIsCustomary } from './rate-is-customary.ts'
import { secondsHandTurnsOnceAMinute } from './seconds-hand-turns-once-a-minute.ts'
import { sizesAgree } from './sizes-agree.ts'
import { sourcesAgree } from './sources-agree.ts'
import { springBendsRoundArbor } from './spring-bends-round-arbor.ts'
import { springFillsBarrel } from './spring-fills-barrel.ts'
import { springLengthFollowsBarrel } from './spring-length-follows-barrel.ts'
import { springStandsWithinBarrel } from './spring-stands-within-barrel.ts'
import { stripOrderHasNoLoop } from './strip-order-has-no-loop.ts'
import { variantKeepsItsBase } from './variant-keeps-its-base.ts'
import { wheelsShareAModule } from './wheels-share-a-module.ts'
import { yearsRunForward } from './years-run-forward.ts'

/** Every proof, in the order in which findings are shown. */
export const proofs: readonly Proof[] = [
  beatRateFollowsTrain,
  rateIsCustomary,
  countsAreCuttable,
  secondsHandTurnsOnceAMinute,
  liftAngleSuitsEscapement,
  hourHandFollowsMinuteHand,
  handsFitInOrder,
  wheelsShareAModule,
  springFillsBarrel,
  springLengthFollowsBarrel,
  springBendsRoundArbor,
  springStandsWithinBarrel,
  goingHoursFollowSpring,
  sizesAgree,
  jewelsAddUp,
  jewelsSitInPairs,
  everyPivotIsOiledOrLeftDry,
  stripOrderHasNoLoop,
  yearsRunForward,
  sourcesAgree,
  variantKeepsItsBase,
]
