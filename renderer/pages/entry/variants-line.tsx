import { useMemo } from 'react'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { variantsAffected } from '../../../core/proofs/variants-affected.ts'
import type { Caliber } from '../../../core/record/caliber.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import { variantsSentences } from '../../../core/wording/variants-sentence.ts'
import { useFamily } from '../../api/use-family.ts'
import { useVariants } from '../../api/use-variants.ts'

interface VariantsLineProps {
  readonly caliberId: number | null
  /** The caliber as the library holds it, and as it now stands in the form over its bases. */
  readonly stored: CaliberEntry
  readonly family: Caliber
}

/** What saving would change in the calibers that are based on this one. */
export const VariantsLine = ({ caliberId, stored, family }: VariantsLineProps) => {
  const own = useMemo(() => readEntry(stored).caliber, [stored])
  const before = useFamily(caliberId, own)
  const variants = useVariants(caliberId)
  const lines = useMemo(
    () =>
      variants.map(({ entry, between }) => ({
        line: [readEntry(entry).caliber, ...between.map((base) => readEntry(base).caliber)] as const,
      })),
    [variants],
  )
  const sentences = useMemo(
    () => (lines.length === 0 ? [] : variantsSentences(variantsAffected(before, family, lines))),
    [before, family, lines],
  )
  return (
    <p className="entry-variants" role="status">
      {sentences.join(' ')}
    </p>
  )
}
