/** One number of a formula, and by how much its print may be rounded. */
interface Operand {
  readonly value: number
  readonly halfStep: number
}

const written = /^(\d+ )?(\d+)\/(\d+)|^\d+(?:\.(\d+))?|^π/

/**
 * Works out a line of working as it stands on paper: + − × ÷, a fraction as one number, squares, π and brackets.
 * Words before a colon and between the numbers are passed over. Null where the line is words alone.
 * `shift` is added to the operands in their order, to try how far rounding carries.
 */
export const evaluateFormula = (formula: string, shift: readonly number[] = []) => {
  let rest = formula
    .replace(/^[^:]*: /, '')
    .replaceAll(/[a-z][a-z’ ]*/gi, ' ')
    .trim()
  const operands: Operand[] = []
  if (!/\d/.test(rest)) return null

  const take = (token: string): boolean => {
    rest = rest.trimStart()
    if (!rest.startsWith(token)) return false
    rest = rest.slice(token.length)
    return true
  }
  const fail = (): never => {
    throw new Error(`cannot read “${rest}” in “${formula}”`)
  }
  const number = (): number => {
    rest = rest.trimStart()
    const [text, whole, above, below, decimals] = written.exec(rest) ?? fail()
    rest = rest.slice(text.length)
    if (text === 'π') return Math.PI
    const value = below === undefined ? Number(text) : Number(whole ?? 0) + Number(above) / Number(below)
    operands.push({ value, halfStep: decimals === undefined ? 0 : 0.5 * 10 ** -decimals.length })
    return value + (shift[operands.length - 1] ?? 0)
  }
  const power = (): number => {
    const base = take('(') ? bracket() : take('−') ? -power() : number()
    return rest.startsWith('²') && take('²') ? base ** 2 : base
  }
  const bracket = (): number => {
    const inside = sum()
    return take(')') ? inside : fail()
  }
  const product = (): number => {
    let value = power()
    for (;;) {
      if (take('×')) value *= power()
      else if (take('÷')) value /= power()
      else return value
    }
  }
  const sum = (): number => {
    let value = product()
    for (;;) {
      if (take('+')) value += product()
      else if (take('−')) value -= product()
      else return value
    }
  }
  const value = sum()
  if (rest.trim() !== '') fail()
  return { value, operands }
}

/** By how much a line may be off because its decimals are rounded. */
export const roundingOf = (formula: string): number => {
  const worked = evaluateFormula(formula)
  if (worked === null) return 0
  let most = 0
  worked.operands.forEach(({ halfStep }, at) => {
    const shifted = evaluateFormula(formula, [...Array(at).fill(0), halfStep])
    most += Math.abs((shifted?.value ?? 0) - worked.value)
  })
  return most
}
