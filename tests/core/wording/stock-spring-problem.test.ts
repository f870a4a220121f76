import { expect, it } from 'vitest'
import { readStockSpring } from '../../../core/exchange/read-stock-spring.ts'
import { stockSpringProblem } from '../../../core/wording/stock-spring-problem.ts'

const spring = { supplierRef: 'A 1', heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }

it.each([
  [{ heightMm: '' }, 'Spring height is missing; fill it in.'],
  [{ inStock: 'some' }, 'In stock: "some" is not a whole number; give how many there are.'],
  [{ note: {} }, 'Note cannot be read; give it as a text or a number.'],
])('says what is wrong with a spring and what to do', (change, sentence) => {
  const read = readStockSpring({ ...spring, ...change })
  expect(read.ok ? '' : stockSpringProblem(read.problem)).toBe(sentence)
})
