import type { WorkingStep } from '../proofs/proof.ts'
import { workingLine } from './working-line.ts'

interface Factor {
  readonly above: bigint
  readonly below: bigint
}

const gcd = (a: bigint, b: bigint): bigint => (b === 0n ? a : gcd(b, a % b))

const written = /^(?:(\d+) )?(\d+)(?:\/(\d+))?$/

/** A whole number, a fraction, or a whole number with a fraction; null for anything else. */
const factorOf = (text: string): Factor | null => {
  const [found, whole, above, below] = written.exec(text) ?? []
  if (found === undefined || above === undefined || (whole !== undefined && below === undefined)) return null
  const under = BigInt(below ?? 1)
  return { above: BigInt(whole ?? 0) * under + BigInt(above), below: under }
}

/** The factors of a plain product, what is divided by turned round; null where the sum is no such product. */
const factorsOf = (formula: string): readonly Factor[] | null => {
  if (!formula.includes('/')) return null
  const [first = '', ...rest] = formula.split(/ (?=[×÷] )/)
  const factors: Factor[] = []
  for (const part of [`× ${first}`, ...rest]) {
    const factor = factorOf(part.slice(2))
    if (factor === null || factor.above === 0n || factor.below === 0n) return null
    factors.push(part.startsWith('÷') ? { above: factor.below, below: factor.above } : factor)
  }
  return factors
}

const lowered = ({ above, below }: Factor): Factor => {
  const common = gcd(above, below)
  return { above: above / common, below: below / common }
}

/** Each number below against those above, an equal one first, as it is struck out by hand. */
const struckOut = (factors: readonly Factor[]): readonly Factor[] => {
  const above = factors.map((factor) => factor.above)
  const below = factors.map((factor) => factor.below)
  below.forEach((under, at) => {
    let left = under
    const equal = above.indexOf(left)
    const order = [...(equal < 0 ? [] : [equal]), ...above.keys()]
    for (const other of order) {
      const common = gcd(above[other] ?? 1n, left)
      above[other] = (above[other] ?? 1n) / common
      left /= common
    }
    below[at] = left
  })
  return factors.map((_, at) => ({ above: above[at] ?? 1n, below: below[at] ?? 1n }))
}

const lineOf = (factors: readonly Factor[]): { text: string; count: number } => {
  const left = factors.filter(({ above, below }) => above !== 1n || below !== 1n)
  return {
    text: left.map(({ above, below }) => (below === 1n ? `${above}` : `${above}/${below}`)).join(' × '),
    count: left.length,
  }
}

/**
 * A product of fractions cancelled as it is on paper: each fraction in its lowest terms, then what stands below against
 * what stands above. Null where there is nothing to cancel, or nothing but the result is left.
 * @example
 * cancelledLine({ formula: '80/10 × 75/10 × 80/8 × 2 × 15', gives: 18000 }) // '8 × 15/2 × 10 × 2 × 15 = 8 × 15 × 10 × 15 = 18\u202f000'
 */
export const cancelledLine = ({ formula, gives }: Pick<WorkingStep, 'formula' | 'gives'>): string | null => {
  const factors = factorsOf(formula)
  if (factors === null) return null
  const low = factors.map(lowered)
  const forms = [lineOf(low), lineOf(struckOut(low))]
    .filter(({ text, count }) => count > 1 && text !== formula)
    .map(({ text }) => text)
  const different = [...new Set(forms)]
  return different.length === 0 ? null : workingLine({ formula: different.join(' = '), gives })
}
