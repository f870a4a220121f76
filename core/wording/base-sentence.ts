import type { WorkingStep } from '../proofs/proof.ts'
import { labelOf } from '../record/label-of.ts'
import type { Judged } from './findings/judged.ts'
import { listed } from './listed.ts'

const differenceOf = ({ where: { field, variant, base } }: WorkingStep): string =>
  `${labelOf(String(field)).toLowerCase()} ${variant} against ${base}`

/** In what a variant's train or barrel departs from its base, and what to do. */
export const baseSentence = ({ working, details }: Judged): string =>
  `A variant usually keeps train and barrel; this one differs from ${details?.basedOn ?? 'its base'} in ` +
  `${listed(working.map(differenceOf))}. Look these up again in both, or note that the variant was changed.`

/** What to do where a base is named that is not at hand. */
export const missingBaseSentence = (basedOn: string): string =>
  `Cannot be checked yet. Its base, ${basedOn}, is not at hand: enter it, or correct the name under "based on".`
