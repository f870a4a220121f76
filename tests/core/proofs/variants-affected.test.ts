import { expect, it } from 'vitest'
import { variantsAffected } from '../../../core/proofs/variants-affected.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { caliberPrinted, soundWatch } from '../../support/caliber-printed.ts'

const named = (designation: string, fields: Parameters<typeof caliberPrinted>[0]): Caliber =>
  caliberPrinted(fields, { maker: 'Verrin', designation })
const base = named('17-220', { ...soundWatch, thirdWheel: '75' })
const misread = named('17-220', { ...soundWatch, thirdWheel: '57' })
const plain = { line: [named('17-221', { basedOn: '17-220' })] as const }
const own = { line: [named('17-222', { basedOn: '17-220', thirdWheel: '75' })] as const }
const further = { line: [named('17-223', { basedOn: '17-221' }), plain.line[0]] as const }

it('says nothing where nothing is changed', () => {
  expect(variantsAffected(base, base, [plain, own, further])).toEqual({ lost: [], inherited: [], turned: [] })
})

it('names the variants that do not state what is changed, through other variants too', () => {
  const { inherited } = variantsAffected(base, misread, [plain, own, further])
  expect(inherited).toEqual([{ key: 'thirdWheel', variants: [plain, further] }])
})

it('tells which proofs of the variants would fail, and which would agree again', () => {
  const would = variantsAffected(base, misread, [plain, own]).turned
  expect(would).toContainEqual({ variant: plain, proof: 'beat-rate-follows-train', to: 'disagrees' })
  expect(would).toContainEqual({ variant: own, proof: 'variant-keeps-its-base', to: 'doubtful' })
  expect(would).not.toContainEqual(expect.objectContaining({ variant: own, proof: 'beat-rate-follows-train' }))
  const again = variantsAffected(misread, base, [plain, own]).turned
  expect(again).toContainEqual({ variant: plain, proof: 'beat-rate-follows-train', to: 'agrees' })
  expect(again).toContainEqual({ variant: own, proof: 'variant-keeps-its-base', to: 'agrees' })
})

it('lists that variants have from the base count as well', () => {
  const jewels = [{ place: 'balance', kind: 'hole', count: 2 }]
  const jewelled: Caliber = { ...base, lists: { ...base.lists, jewels } }
  expect(variantsAffected(base, jewelled, [plain]).inherited).toEqual([{ key: 'jewels', variants: [plain] }])
})

it('a base with a new name loses its variants, unless the old one stays among its other names', () => {
  expect(variantsAffected(base, named('17-230', soundWatch), [plain, further]).lost).toEqual([plain, further])
  const known = named('17-230', { ...soundWatch, thirdWheel: '75', alsoKnownAs: '17-220' })
  expect(variantsAffected(base, known, [plain]).lost).toEqual([])
})

it('keeps silent of a proof that found the same wrong before', () => {
  expect(variantsAffected(misread, misread, [plain]).turned).toEqual([])
  const longer = named('17-220', { ...soundWatch, thirdWheel: '57', springLengthMm: '470' })
  const turned = variantsAffected(misread, longer, [plain]).turned.map(({ proof }) => proof)
  expect(turned).not.toContain('beat-rate-follows-train')
})

it('does not call it a turn where a proof could not be checked before and now agrees', () => {
  const { thirdWheel: _, ...short } = soundWatch
  const { inherited, turned } = variantsAffected(named('17-220', short), base, [plain])
  expect(inherited).toEqual([{ key: 'thirdWheel', variants: [plain] }])
  expect(turned).toEqual([])
  expect(variantsAffected(base, named('17-220', short), [plain]).turned).toEqual([])
})

it('says nothing more of variants that lose their base', () => {
  const renamed = named('17-230', { ...soundWatch, thirdWheel: '57' })
  expect(variantsAffected(base, renamed, [plain])).toEqual({ lost: [plain], inherited: [], turned: [] })
})
