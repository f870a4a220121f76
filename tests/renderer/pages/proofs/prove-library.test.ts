import { expect, test } from 'vitest'
import type { CallOutput, ProofLine } from '../../../../core/api/contract.ts'
import { nothingProved, type Proved, proveLibrary } from '../../../../renderer/pages/proofs/prove-library.ts'

const line = { caliberId: 1, proof: 'jewels-add-up' } as ProofLine

/** A library of so many calibers, each with one wrong finding and as many lines. */
const library = (total: number, linesEach = 1) => {
  const asked: number[] = []
  const ask = async ({ offset, limit }: { offset: number; limit: number }): Promise<CallOutput<'proofs.sheet'>> => {
    asked.push(offset)
    const proved = Math.max(0, Math.min(limit, total - offset))
    return {
      total,
      calibers: { wrong: proved, doubtful: 0, sound: 0, unproved: 0 },
      counts: [{ proof: 'jewels-add-up', standing: 'wrong', count: proved }],
      lines: Array.from({ length: proved * linesEach }, () => line),
    }
  }
  return { ask, asked }
}
const clock = (step: number) => {
  let at = 0
  return () => {
    at += step
    return at
  }
}
const never = () => false

test('stretch after stretch is proved to the end and counted together', async () => {
  const { ask, asked } = library(250)
  const proved = await proveLibrary({ ask, unchecked: false, stopped: never, show: () => {}, now: clock(0) })
  expect(asked).toEqual([0, 100, 200])
  expect(proved).toMatchObject({ proved: 250, total: 250, leftOut: 0, calibers: { wrong: 250, sound: 0 } })
  expect(proved.counts.get('jewels-add-up')?.get('wrong')).toBe(250)
  expect(proved.lines.length).toBe(250)
})

test('what was proved so far is shown now and then, and stays as it was shown', async () => {
  const shown: Proved[] = []
  const show = (proved: Proved) => void shown.push(proved)
  await proveLibrary({ ...library(350), unchecked: false, stopped: never, show, now: clock(100) })
  expect(shown.map(({ proved }) => proved)).toEqual([200])
  expect(shown[0]?.lines.length).toBe(200)
})

test('an empty library is proved at once', async () => {
  const proved = await proveLibrary({ ...library(0), unchecked: true, stopped: never, show: () => {}, now: clock(0) })
  expect(proved).toMatchObject({ ...nothingProved, counts: expect.anything() })
})

test('it stops where it is told to, and what comes late is not counted', async () => {
  const { ask, asked } = library(1000)
  const proved = await proveLibrary({
    ask,
    unchecked: false,
    stopped: () => asked.length >= 3,
    show: () => {},
    now: clock(0),
  })
  expect(asked).toEqual([0, 100, 200])
  expect(proved).toMatchObject({ proved: 200, total: 1000 })
})

test('more lines than a page holds are counted and not kept', async () => {
  const { ask } = library(300, 400)
  const proved = await proveLibrary({ ask, unchecked: true, stopped: never, show: () => {}, now: clock(0) })
  expect(proved.lines.length).toBe(100_000)
  expect(proved.leftOut).toBe(20_000)
})
