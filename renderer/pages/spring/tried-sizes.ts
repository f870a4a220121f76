import type { CaliberFieldKey } from '../../../core/fields/caliber-fields.ts'
import type { CaliberValues } from '../../../core/record/caliber.ts'
import { type TypedFigure, typedField } from '../../components/typed-figure.ts'

/** The sizes that can be tried at the bench. */
export const triedKeys = [
  'barrelInsideMm',
  'barrelDepthMm',
  'barrelArborMm',
  'springHeightMm',
  'springThicknessMm',
  'springLengthMm',
  'bridleThicknessMm',
] as const satisfies readonly CaliberFieldKey[]
export type TriedKey = (typeof triedKeys)[number]

/** What was typed over the specification, by size. */
export type TriedTexts = { readonly [K in TriedKey]?: string }

/** A size as it stands at the bench. */
export interface TriedSize {
  readonly key: TriedKey
  readonly figure: TypedFigure
  /** Whether it is another than the one specified. */
  readonly changed: boolean
}

/** The sizes as specified, with what was typed in their place; and the caliber as it would be with them. */
export const trySizes = (
  specified: CaliberValues,
  texts: TriedTexts,
): { readonly sizes: readonly TriedSize[]; readonly values: CaliberValues } => {
  const sizes = triedKeys.map((key): TriedSize => {
    const figure = typedField(key, texts[key] ?? String(specified[key] ?? ''))
    return { key, figure, changed: texts[key] !== undefined && figure.value !== specified[key] }
  })
  const { values } = sizes.reduce(
    ({ values }, { key, figure: { value } }) => {
      const { [key]: _, ...others } = values
      return { values: value === undefined ? others : { ...others, [key]: value } }
    },
    { values: specified },
  )
  return { sizes, values }
}
