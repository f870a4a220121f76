import type { NearReason } from '../record/near-names.ts'

const sentences: Readonly<Record<NearReason, string>> = {
  'same-name': 'is already in the library',
  'other-maker-spelling': 'has this designation, of a maker spelt nearly alike',
  'other-name': 'is also known by this name',
  'one-character': 'differs by one character',
}

/**
 * Says after a caliber's name why it may be the one being typed.
 * @example
 * wordNearName('same-name') // 'is already in the library'
 */
export const wordNearName = (reason: NearReason): string => sentences[reason]
