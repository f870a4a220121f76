import { expect, it } from 'vitest'
import { liftAngleSuitsEscapement as proof } from '../../core/proofs/lift-angle-suits-escapement.ts'
import { caliberPrinted } from '../support/caliber-printed.ts'

// Grade A: the text was read.
const keystone = 'Watch and Clock Escapements, compiled from The Keystone, 1904'
const playtner = 'H. R. Playtner, An Analysis of the Lever Escapement, 1910'
const rows: readonly [printed: string, year: string, place: string][] = [
  ['30', '1904', `${keystone}, p. 55 ff., the usual value`],
  ['40', '1904', `${keystone}, p. 55 ff., “have been constructed”`],
  ['24', '1904', `${keystone}, p. 73, double roller`],
  ['31 1/2', '1910', `${playtner}, p. 28, 10 1/2° at the fork × 3`],
  ['27.5', '1910', `${playtner}, p. 28, the finest`],
  ['50', '1910', `${playtner}, p. 28`],
  ['30', '1910', `${playtner}, p. 35, single roller`],
  ['35', '1910', `${playtner}, p. 35, single roller`],
]
const judge = (fields: Readonly<Record<string, string>>) =>
  proof.judge(caliberPrinted({ escapement: 'lever', ...fields }))

it.each(rows)('%s° suits a lever of %s (%s)', (liftAngleDeg, firstYear) => {
  expect(judge({ liftAngleDeg, firstYear }).outcome).toBe('agrees')
})

it.each(rows)('%s° is never called wrong, whatever the year: printed %s (%s)', (liftAngleDeg) => {
  expect(['agrees', 'doubtful']).toContain(judge({ liftAngleDeg }).outcome)
})

it('52°, the usual setting of timing instruments, suits a lever of any year (common practice; from memory, grade C)', () => {
  for (const firstYear of ['1900', '1955']) expect(judge({ liftAngleDeg: '52', firstYear }).outcome).toBe('agrees')
})
