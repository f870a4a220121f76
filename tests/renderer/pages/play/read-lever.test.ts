import { expect, test } from 'vitest'
import { nothingTyped } from '../../../../renderer/pages/play/play-place.ts'
import { readLever } from '../../../../renderer/pages/play/read-lever.ts'

test('nothing typed, nothing judged', () => {
  const { freedoms, left } = readLever(nothingTyped)
  expect(freedoms.map(({ freedom, finding }) => [freedom, finding])).toEqual(
    ['lock', 'run', 'drop', 'edge', 'slot'].map((freedom) => [freedom, undefined]),
  )
  expect(left).toBeUndefined()
})

test('the form of the tooth decides the drop', () => {
  const typed = { ...nothingTyped, freedoms: { drop: '2.0' } }
  const verdict = (tooth: 'club' | 'ratchet') =>
    readLever({ ...typed, tooth }).freedoms.find(({ freedom }) => freedom === 'drop')?.finding?.verdict
  expect(verdict('club')).toBe('above')
  expect(verdict('ratchet')).toBe('within')
})

test('angles become arcs on the wheel, or on twice the fork', () => {
  const typed = { ...nothingTyped, wheelMm: '7.5', forkMm: '4.5', freedoms: { drop: '1.5', edge: '1', lock: '1.5' } }
  const arcs = Object.fromEntries(readLever(typed).freedoms.map(({ freedom, arcMm }) => [freedom, arcMm]))
  expect(arcs.drop).toBeCloseTo(0.09817, 5)
  expect(arcs.edge).toBeCloseTo(0.07854, 5)
  expect(arcs.lock).toBeUndefined()
  expect(arcs.slot).toBeUndefined()
})

test('what is left of the lock follows once lock, run and edge are known', () => {
  const freedoms = { lock: '1 1/2', run: '1/2', edge: '1 1/4' }
  expect(readLever({ ...nothingTyped, freedoms }).left).toMatchObject({ leftDeg: { value: 0.75 }, verdict: 'holds' })
  expect(readLever({ ...nothingTyped, offDeg: '1/2', freedoms }).left?.verdict).toBe('cannot-tell')
})
