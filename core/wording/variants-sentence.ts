import type { Turn, VariantInLine, VariantsAffected } from '../proofs/variants-affected.ts'
import { labelOf } from '../record/label-of.ts'
import { listed } from './listed.ts'
import { proofTitle } from './proof-title.ts'

const counts = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six']

const turns: Readonly<Record<Turn, string>> = {
  agrees: 'would then agree in',
  disagrees: 'would then disagree in',
  doubtful: 'would then be doubtful in',
}

const nameOf = ({ line: [own] }: VariantInLine): string => own.values.designation ?? ''
const howMany = (variants: readonly VariantInLine[]): string =>
  `${counts[variants.length] ?? variants.length} ${variants.length === 1 ? 'variant' : 'variants'}`
const names = (variants: readonly VariantInLine[]): string => variants.map(nameOf).join(', ')

/** Things said of the same variants, together. */
const together = <T>(said: readonly T[], of: (one: T) => string): readonly (readonly [T, ...T[]])[] => {
  const groups = new Map<string, [T, ...T[]]>()
  for (const one of said) {
    const group = groups.get(of(one))
    if (group) group.push(one)
    else groups.set(of(one), [one])
  }
  return [...groups.values()]
}

/** What else a change of a base changes, a sentence for each thing; none where it changes nothing else. */
export const variantsSentences = ({ lost, inherited, turned }: VariantsAffected<VariantInLine>): readonly string[] => {
  const sentences: string[] = []
  if (lost.length > 0)
    sentences.push(`${howMany(lost)} would no longer be found to be based on this, by its new name: ${names(lost)}.`)
  for (const group of together(inherited, ({ variants }) => names(variants))) {
    const [{ variants }] = group
    const what = listed(group.map(({ key }) => `the ${labelOf(key).toLowerCase()}`))
    sentences.push(
      `${howMany(variants)} ${variants.length === 1 ? 'inherits' : 'inherit'} ${what}: ${names(variants)}.`,
    )
  }
  for (const group of together(turned, ({ variant, to }) => `${nameOf(variant)} ${to}`)) {
    const [{ variant, to }] = group
    const titles = group.map(({ proof }) => proofTitle(proof))
    sentences.push(`${nameOf(variant)} ${turns[to]} ${titles.join('; ')}.`)
  }
  return sentences
}
