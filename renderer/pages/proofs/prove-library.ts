import type { CallInput, CallOutput, ProofLine } from '../../../core/api/contract.ts'
import type { Standing } from '../../../core/proofs/standing.ts'

/** What was proved so far. */
export interface Proved {
  readonly proved: number
  readonly total: number
  readonly calibers: CallOutput<'proofs.sheet'>['calibers']
  /** How many findings of each proof stand how. */
  readonly counts: ReadonlyMap<string, ReadonlyMap<Standing, number>>
  readonly lines: readonly ProofLine[]
  /** Lines beyond those that a page can hold; they are counted only. */
  readonly leftOut: number
}

/** Calibers proved at once: other calls wait for no longer than that takes. */
const stretch = 100
/** Lines that a page holds. */
const most = 100_000
/** Milliseconds between two looks. */
const pause = 150

export const nothingProved: Proved = {
  proved: 0,
  total: 0,
  calibers: { wrong: 0, doubtful: 0, sound: 0, unproved: 0 },
  counts: new Map(),
  lines: [],
  leftOut: 0,
}

interface Proving {
  readonly ask: (input: CallInput<'proofs.sheet'>) => Promise<CallOutput<'proofs.sheet'>>
  readonly unchecked: boolean
  readonly stopped: () => boolean
  /** Given what was proved so far, now and then. */
  readonly show: (proved: Proved) => void
  readonly now: () => number
}

/** Proves the library stretch by stretch until its end or until it is stopped, and answers what was proved. */
export const proveLibrary = async ({ ask, unchecked, stopped, show, now }: Proving): Promise<Proved> => {
  const counts = new Map<string, Map<Standing, number>>()
  const lines: ProofLine[] = []
  let [proved, total, leftOut, shownAt] = [0, 0, 0, now()]
  let calibers = nothingProved.calibers
  const soFar = (): Proved => ({
    proved,
    total,
    calibers,
    counts: new Map([...counts].map(([proof, ofProof]) => [proof, new Map(ofProof)])),
    lines: [...lines],
    leftOut,
  })
  while (!stopped()) {
    const sheet = await ask({ offset: proved, limit: stretch, unchecked })
    if (stopped()) break
    for (const { proof, standing, count } of sheet.counts) {
      const ofProof = counts.get(proof) ?? new Map<Standing, number>()
      counts.set(proof, ofProof.set(standing, (ofProof.get(standing) ?? 0) + count))
    }
    calibers = {
      wrong: calibers.wrong + sheet.calibers.wrong,
      doubtful: calibers.doubtful + sheet.calibers.doubtful,
      sound: calibers.sound + sheet.calibers.sound,
      unproved: calibers.unproved + sheet.calibers.unproved,
    }
    const room = sheet.lines.slice(0, Math.max(0, most - lines.length))
    lines.push(...room)
    leftOut += sheet.lines.length - room.length
    total = sheet.total
    proved = Math.min(proved + stretch, total)
    if (proved >= total) break
    if (now() - shownAt < pause) continue
    shownAt = now()
    show(soFar())
  }
  return soFar()
}
