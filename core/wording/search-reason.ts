import type { SearchReason } from '../api/contract.ts'

const sentences: Readonly<Record<SearchReason['code'], (matched: string) => string>> = {
  designation: (matched) => `The designation is ${matched}.`,
  maker: (matched) => `The maker is ${matched}.`,
  alias: (matched) => `Also known as ${matched}.`,
  size: (matched) => `The size is ${matched}.`,
  words: (matched) => `Its entry says ${matched}.`,
  spelling: (matched) => `Spelt nearly like ${matched}.`,
  'maker-and-designation': (matched) => `Maker and designation are ${matched}.`,
}

/**
 * Says why a search found a caliber.
 * @example
 * wordSearchReason({ code: 'alias', matched: 'Verrin 12A' }) // 'Also known as Verrin 12A.'
 */
export const wordSearchReason = (reason: SearchReason): string => sentences[reason.code](reason.matched)
