import { springCoils } from '../formulas/barrel.ts'
import { goingHours } from '../formulas/going-hours.ts'
import { missingCounts, stageCounts, stagesToCentre } from '../formulas/train-stages.ts'
import { onPaper } from '../quantities/on-paper.ts'
import { plain } from '../quantities/plain.ts'
import { barrelSizeKeys, coilSpace } from '../springs/barrel-sizes.ts'
import { barrelTurnHours } from '../springs/barrel-turn.ts'
import { defineProof } from './define-proof.ts'
import { exactValue } from './exact-value.ts'
import type { WorkingStep } from './proof.ts'
import { countsWhere, fractionsOf } from './train-working.ts'

const stopWorkHours = 0.5
const stopWorkBorneShare = 0.05
/** Shares of the stated hours by which the development may fall short or run over: first agreed to, then borne. */
const short = { agrees: 0.02, borne: 0.05 }
const over = { agrees: 0.2, borne: 0.5 }

const used = [
  ...barrelSizeKeys,
  'stopWorkTurns',
  'barrelTeeth',
  'centrePinion',
  'intermediatePinion',
  'intermediateWheel',
  'springEnd',
  'bridleThicknessMm',
  'hoursPerCentreTurn',
] as const

/** The stated hours of going lie within what the spring and the barrel’s speed give. */
export const goingHoursFollowSpring = defineProof({
  id: 'going-hours-follow-spring',
  title: 'Going hours follow the spring',
  meaning:
    'The turns of the spring, at the barrel’s speed, last as long as the stated hours of going; where they fall short, spring, barrel or train is not as designed.',
  needs: ['goingHours'],
  uses: used,
  lists: [],
  tolerance: {
    allows:
      'with stop work half an hour (5 % is doubtful); without, development from 2 % short to 20 % over the stated hours ' +
      '(5 % short to 50 % over is doubtful)',
    why:
      'Stop work fixes the turns, so only rounding is left. Without it the stated hours are fewer than the theoretical ' +
      'development: the end coils and the slack near let-down are not used, which costs up to one or two turns. ' +
      'More hours than the development holds cannot be had. The limits are our choice.',
  },
  source:
    'W. L. Goodrich, The Modern Clock, 1905, pp. 259, 281–284; W. J. Kleinlein, Rules and Practice for Adjusting Watches, 1920, p. 42',
  validity:
    'Going barrels. Turns are those of the ring model, or of the stop work where they are fewer. With a slipping bridle ' +
    'full wind is set by the slip, so the figure is an upper bound.',
  reasons: ['hours-agree', 'hours-short', 'hours-over'],
  missingBesides: (values) => {
    const missing: string[] = missingCounts(values, stagesToCentre(values))
    const sizes = values.stopWorkTurns === undefined ? barrelSizeKeys.filter((key) => values[key] === undefined) : []
    return used.filter((key) => missing.includes(key) || sizes.some((size) => size === key))
  },
  judge: (values, { readings }) => {
    const { goingHours: stated, stopWorkTurns: stop, hoursPerCentreTurn: centre } = values
    const { barrelInsideMm: inside, barrelArborMm, springThicknessMm, springLengthMm } = values
    const exactCentre = centre === undefined ? undefined : exactValue(readings, 'hoursPerCentreTurn', centre)
    const hours = barrelTurnHours(values, exactCentre)
    const stages = stagesToCentre(values)
    const counts = stageCounts(values, stages)
    if (hours === null || counts === null) return { outcome: 'cannot-check', missing: missingCounts(values, stages) }

    let coils: { readonly wound: number; readonly down: number; readonly turns: number } | undefined
    let where: Readonly<Record<string, number>> = {}
    if (
      inside !== undefined &&
      barrelArborMm !== undefined &&
      springThicknessMm !== undefined &&
      springLengthMm !== undefined
    ) {
      const barrelInsideMm = coilSpace(values, inside)
      const bridle = barrelInsideMm === inside ? {} : { insideWithinBridleMm: plain(barrelInsideMm) }
      coils = springCoils({ barrelInsideMm, barrelArborMm, springThicknessMm, springLengthMm })
      where = { barrelInsideMm: inside, ...bridle, barrelArborMm, springThicknessMm, springLengthMm }
    }
    const sprung = coils?.turns ?? Number.POSITIVE_INFINITY
    const stopped = stop !== undefined && stop <= sprung
    const turns = stopped ? stop : sprung
    const found = plain(goingHours(turns, hours))
    const difference = plain(found - stated)
    const bounds = stopped
      ? { agrees: stopWorkHours, borne: Math.max(stopWorkHours, stated * stopWorkBorneShare) }
      : difference < 0
        ? { agrees: stated * short.agrees, borne: stated * short.borne }
        : { agrees: stated * over.agrees, borne: stated * over.borne }
    // `plain` has stripped the noise of binary subtraction, so an edge that was typed is met exactly.
    const off = Math.abs(difference)
    const outcome = off <= plain(bounds.agrees) ? 'agrees' : off <= plain(bounds.borne) ? 'doubtful' : 'disagrees'
    return {
      outcome,
      stated,
      found,
      unit: 'h',
      difference,
      allowed: plain(bounds.agrees),
      get working() {
        const working: WorkingStep[] = []
        if (coils !== undefined) {
          const { wound, down } = coils
          const formula = `${onPaper(wound, 3)} coils wound − ${onPaper(down, 3)} let down`
          working.push({ formula, where: { ...where, wound, down }, gives: coils.turns })
        }
        const slow = exactCentre === undefined ? '' : ` × ${exactCentre.toFraction(true)}`
        working.push(
          {
            formula: `${fractionsOf(counts.wheels, counts.pinions)}${slow}`,
            where: countsWhere(values, stages),
            gives: hours,
          },
          {
            formula: `${onPaper(turns, 3)} × ${onPaper(hours, 3)}`,
            where: { turns, hoursPerTurn: hours },
            gives: found,
          },
        )
        return working
      },
      reason: outcome === 'agrees' ? 'hours-agree' : difference < 0 ? 'hours-short' : 'hours-over',
      details: { turns, hoursPerTurn: hours, limit: stopped ? 'stop-work' : 'spring' },
    }
  },
})
