import { expect, test } from 'vitest'
import { spokenWorking } from '../../../core/wording/spoken-working.ts'

test.each([
  ['80/10 × 75/10 × 2 × 15 = 18\u202f000', '80 over 10 times 75 over 10 times 2 times 15 equals 18\u202f000'],
  ['143616 ÷ 14 2/5 = 9973 1/3', '143616 divided by 14 and 2 over 5 equals 9973 and 1 over 3'],
  ['4 × 480 ÷ (π × (16² − 6²))', '4 times 480 divided by (π times (16 squared minus 6 squared))'],
  ['2 + 2 + 1 = 5', '2 plus 2 plus 1 equals 5'],
])('%s is read aloud', (line, spoken) => {
  expect(spokenWorking(line)).toBe(spoken)
})
