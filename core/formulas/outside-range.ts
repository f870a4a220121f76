/** Why a formula does not answer: its figures cannot belong to a barrel, a train or a balance. `core/wording` says it. */
export type OutsideRangeCode =
  | 'not-positive'
  | 'arbor-fills-barrel'
  | 'bridle-fills-barrel'
  | 'spring-overfills-barrel'
  | 'pack-fills-barrel'
  | 'lift-outlasts-vibration'
  | 'swing-within-lift'
  | 'no-usual-lift'
  | 'pivot-fills-hole'

/** Thrown by a formula for figures outside its validity; the runner of the proofs turns it into an outcome. */
export class OutsideRange extends Error {
  readonly code: OutsideRangeCode
  readonly details: Readonly<Record<string, number | string>>
  constructor(code: OutsideRangeCode, details: Readonly<Record<string, number | string>>) {
    super(code)
    this.name = 'OutsideRange'
    this.code = code
    this.details = details
  }
}
