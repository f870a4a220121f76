import { expect, it } from 'vitest'
import { sourcesAgree as proof } from '../../../core/proofs/sources-agree.ts'
import { caliberPrinted } from '../../support/caliber-printed.ts'

const judge = (key: string, ...printed: string[]) => proof.judge(caliberPrinted({ [key]: printed }))

it('says nothing of a caliber whose fields have one reading each', () => {
  const { values, readings } = caliberPrinted({ thirdWheel: '75', notes: ['one', 'other'] })
  expect(proof.appliesTo?.(values, readings)).toBe(false)
})

it('agrees where the printed roundings meet', () => {
  expect(judge('springThicknessMm', '18/100', '0.183')).toMatchObject({
    outcome: 'agrees',
    reason: 'readings-agree',
    fields: ['springThicknessMm'],
  })
})

it('disagrees by one tooth, and by another word', () => {
  expect(judge('thirdWheel', '75', '76')).toMatchObject({ outcome: 'disagrees', stated: 75, found: 76, difference: 1 })
  expect(judge('escapement', 'lever', 'cylinder')).toMatchObject({
    outcome: 'disagrees',
    stated: null,
    difference: null,
    working: [{ formula: 'lever against cylinder', gives: 'different' }],
  })
})

it('doubts a measured value up to 1 % off and disagrees beyond', () => {
  expect(judge('springLengthMm', '500.0', '505.0')).toMatchObject({ outcome: 'doubtful', difference: 5, allowed: 0.1 })
  expect(judge('springLengthMm', '500.0', '505.1').outcome).toBe('disagrees')
  expect(judge('springLengthMm', '500', '500.9')).toMatchObject({ outcome: 'doubtful' })
  expect(judge('springLengthMm', '500', '500.4').outcome).toBe('agrees')
})

it('meets the edge of 1 % exactly, where binary numbers would miss it', () => {
  expect(judge('springHeightMm', '1.000', '1.010').outcome).toBe('doubtful')
  expect(judge('springHeightMm', '1.000', '1.011').outcome).toBe('disagrees')
})

it('takes another year for another year, since it is not measured', () => {
  expect(judge('firstYear', '1926', '1927')).toMatchObject({ outcome: 'disagrees', unit: 'years', difference: 1 })
  expect(judge('firstYear', '1926', 'c. 1928')).toMatchObject({ outcome: 'agrees' })
  // A year with circa before it is good to about five, as in the proof that years run forward.
  expect(judge('firstYear', 'c. 1926', '1931')).toMatchObject({ outcome: 'doubtful', allowed: 5 })
  expect(judge('firstYear', 'c. 1926', '1932')).toMatchObject({ outcome: 'disagrees' })
})

it('is judged by the worst of several fields and names them all', () => {
  const found = proof.judge(
    caliberPrinted({
      springLengthMm: ['500.0', '501.0'],
      springThicknessMm: ['0.81', '0.18'],
      thirdWheel: ['75', '75'],
    }),
  )
  expect(found).toMatchObject({
    outcome: 'disagrees',
    unit: 'mm',
    difference: -0.63,
    fields: ['springLengthMm', 'springThicknessMm'],
  })
  expect(found).toHaveProperty('working.length', 2)
})

it('keeps who says what in the working', () => {
  const found = proof.judge(
    caliberPrinted({
      springThicknessMm: [{ printed: '0,81', source: 'tables', page: '118' }, { printed: '0.18' }],
    }),
  )
  expect(found).toHaveProperty('working.0', {
    formula: '0.18 − 0.81',
    where: {
      field: 'springThicknessMm',
      first: '0,81',
      firstSource: 'tables',
      firstPage: '118',
      second: '0.18',
      allowed: 0.01,
      unit: 'mm',
    },
    gives: -0.63,
  })
})

it('says in full what meets, and how many fields were read twice', () => {
  expect(judge('springThicknessMm', '18/100', '0.183')).toEqual({
    outcome: 'agrees',
    stated: null,
    found: null,
    unit: '',
    difference: null,
    allowed: null,
    working: [],
    reason: 'readings-agree',
    details: { fields: 1 },
    fields: ['springThicknessMm'],
  })
})

it('says in full which words differ, with no figures to them', () => {
  expect(judge('escapement', 'lever', 'cylinder')).toStrictEqual({
    outcome: 'disagrees',
    stated: null,
    found: null,
    unit: '',
    difference: null,
    allowed: null,
    working: [
      {
        formula: 'lever against cylinder',
        where: { field: 'escapement', first: 'lever', second: 'cylinder' },
        gives: 'different',
      },
    ],
    reason: 'readings-differ',
    fields: ['escapement'],
  })
})

it.each([
  ['beatRateVph', '18 000', '18 100', 'doubtful', 'vph'],
  ['liftAngleDeg', '52', '54', 'disagrees', 'deg'],
  ['goingHours', '40 h', '42 h', 'disagrees', 'h'],
  ['thirdWheel', '75', '76', 'disagrees', ''],
  ['barrelTeeth', '120', '121', 'disagrees', ''],
])('%s of %s and %s %s, in its unit “%s”', (key, one, other, outcome, unit) => {
  expect(judge(key, one, other)).toMatchObject({ outcome, unit })
})

it('finds the worst wherever it stands, and of two equally bad the first', () => {
  const wide = { springLengthMm: ['500.0', '501.0'], springThicknessMm: ['0.81', '0.18'], goingHours: ['40 h', '42 h'] }
  expect(proof.judge(caliberPrinted(wide))).toMatchObject({ stated: 0.81, found: 0.18 })
  expect(proof.judge(caliberPrinted({ thirdWheel: ['75', '76'], fourthWheel: ['80', '70'] }))).toMatchObject({
    stated: 75,
    found: 76,
  })
})
