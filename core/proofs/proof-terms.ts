import { proofs } from './index.ts'

/** A proof as the glossary explains it. */
export interface ProofTerm {
  readonly key: string
  readonly label: string
  readonly meaning: string
  readonly allows: string
  readonly why: string
  readonly source: string
  readonly validity: string
  /** All of that besides label and meaning, for the search. */
  readonly said: readonly string[]
}

/**
 * Every proof with its meaning, tolerance, source and range of validity, in alphabetical order of title.
 * @example
 * proofTerms().find((term) => term.key === 'jewels-add-up')?.allows // 'nothing'
 */
export const proofTerms = (): readonly ProofTerm[] =>
  proofs
    .map(({ id, title, meaning, tolerance: { allows, why }, source, validity }) => {
      const said = { allows, why, source, validity }
      return { key: id, label: title, meaning, ...said, said: Object.values(said) }
    })
    .toSorted((a, b) => (a.label < b.label ? -1 : 1))
