import type { Caliber } from '../../../core/record/caliber.ts'

/** What every section of the spring page is given: the caliber with all that it inherits, and how it is called. */
export interface SpringSectionProps {
  readonly caliber: Caliber
  readonly name: string
  readonly caliberId: number
}
