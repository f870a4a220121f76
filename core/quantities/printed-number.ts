import Fraction from 'fraction.js'
import type { QuantityProblem } from './quantity.ts'

/** A number as printed, before its unit is known. */
export interface PrintedNumber {
  readonly exact: Fraction
  /** One unit of the last digit printed; for a vulgar fraction one part of its denominator. */
  readonly step: Fraction
  /** The denominator, where a vulgar fraction was printed. */
  readonly denominator?: number
  /** True where neither decimals nor a fraction were printed. */
  readonly whole: boolean
}

export type NumberRead =
  | { readonly ok: true; readonly number: PrintedNumber }
  | { readonly ok: false; readonly problem: QuantityProblem }

/** What one mark before exactly three digits means (`18,000`): 'ask' refuses the comma and takes the point as decimal. */
export type Grouping = 'ask' | 'thousands' | 'decimal'

const fromDigits = (whole: string, decimals: string): NumberRead => {
  const scale = 10n ** BigInt(decimals.length)
  return {
    ok: true,
    number: {
      exact: new Fraction(BigInt(`${whole}${decimals}`), scale),
      step: new Fraction(1n, scale),
      whole: decimals === '',
    },
  }
}

const readVulgar = (text: string, whole: string, above: string, below: string): NumberRead => {
  if (/^0+$/.test(below)) return { ok: false, problem: { code: 'zero-denominator', text } }
  const denominator = BigInt(below)
  return {
    ok: true,
    number: {
      exact: new Fraction(BigInt(whole) * denominator + BigInt(above), denominator),
      step: new Fraction(1n, denominator),
      denominator: Number(denominator),
      whole: false,
    },
  }
}

/**
 * Reads a number written with digits, decimal point or comma, groups of thousands, or a vulgar fraction.
 * A comma before exactly three digits can be a decimal comma or a thousands mark; `grouping` says which.
 */
export const readNumber = (text: string, grouping: Grouping): NumberRead => {
  const vulgar = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(text)
  if (vulgar) return readVulgar(text, vulgar[1] ?? '0', vulgar[2] ?? '', vulgar[3] ?? '')

  const single = /^([1-9]\d{0,2})([.,])(\d{3})$/.exec(text)
  if (single) {
    const [, whole = '', mark, rest = ''] = single
    if (grouping === 'thousands') return fromDigits(`${whole}${rest}`, '')
    if (grouping === 'ask' && mark === ',')
      return { ok: false, problem: { code: 'ambiguous', text, readings: [`${whole}.${rest}`, `${whole}${rest}`] } }
  }
  const plain = /^(\d*)(?:[.,](\d+))?$/.exec(text)
  if (plain && text !== '') return fromDigits(plain[1] ?? '', plain[2] ?? '')

  if (/^\d{1,3}(?:[ ']\d{3})+(?:[.,]\d+)?$/.test(text)) {
    const [whole = '', decimals = ''] = text.split(/[.,]/)
    return fromDigits(whole.replace(/[ ']/g, ''), decimals)
  }
  if (/^\d{1,3}(?:,\d{3})+\.\d+$/.test(text) || /^\d{1,3}(?:\.\d{3})+,\d+$/.test(text)) {
    const at = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','))
    return fromDigits(text.slice(0, at).replace(/[.,]/g, ''), text.slice(at + 1))
  }
  if (/^\d{1,3}(?:,\d{3}){2,}$/.test(text) || /^\d{1,3}(?:\.\d{3}){2,}$/.test(text))
    return fromDigits(text.replace(/[.,]/g, ''), '')
  return { ok: false, problem: { code: 'unreadable', text } }
}

/** Splits `17 lig` into its figures and whatever follows the last digit, or null where no digit stands first. */
export const splitFigures = (text: string): { figures: string; rest: string } | null => {
  const found = /^([\d.,' /-]*\d)\s*(\D*)$/.exec(text)
  return found && !/^[ '/-]/.test(text) ? { figures: found[1] ?? '', rest: (found[2] ?? '').trim() } : null
}
