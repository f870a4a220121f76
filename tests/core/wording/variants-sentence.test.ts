import { expect, it } from 'vitest'
import { variantsSentences } from '../../../core/wording/variants-sentence.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'

const variant = (designation: string) => ({
  line: [caliberPrinted({ basedOn: '17-220' }, { maker: 'Verrin', designation })] as const,
})
const one = variant('17-221')
const two = variant('17-222')

it('says what is inherited by whom, and which proofs would turn', () => {
  expect(
    variantsSentences({
      lost: [],
      inherited: [
        { key: 'thirdWheel', variants: [one, two] },
        { key: 'beatRateVph', variants: [one, two] },
        { key: 'jewels', variants: [two] },
      ],
      turned: [
        { variant: one, proof: 'beat-rate-follows-train', to: 'disagrees' },
        { variant: two, proof: 'variant-keeps-its-base', to: 'doubtful' },
      ],
    }),
  ).toMatchInlineSnapshot(`
    [
      "Two variants inherit the third wheel and the beat rate: 17-221, 17-222.",
      "One variant inherits the jewels by place: 17-222.",
      "17-221 would then disagree in Beat rate follows the train.",
      "17-222 would then be doubtful in Variant keeps its base.",
    ]
  `)
})

it('says which variants are lost, and nothing of none', () => {
  expect(variantsSentences({ lost: [one], inherited: [], turned: [] })).toMatchInlineSnapshot(`
    [
      "One variant would no longer be found to be based on this, by its new name: 17-221.",
    ]
  `)
  expect(variantsSentences({ lost: [], inherited: [], turned: [] })).toEqual([])
})
