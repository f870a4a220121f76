import { expect, it } from 'vitest'
import { guessSpringColumns } from '../../../core/exchange/guess-spring-columns.ts'
import { readSpringTable, springTableReader } from '../../../core/exchange/read-spring-table.ts'

const settled = (rows: readonly (readonly string[])[]) => ({
  ...guessSpringColumns(rows),
  order: 'height-thickness-length-barrel' as const,
  words: {},
})
const heading = ['Ref', 'Height', 'Thickness (1/100)', 'Length', 'End', 'Stock']

it('reads a list under its headings, in the units that they say', () => {
  const rows = [heading, ['A1', '1,50', '10,5', '360', 'tongue', '3']]
  expect(readSpringTable(rows, settled(rows))).toEqual({
    springs: [
      {
        row: 2,
        spring: {
          supplierRef: 'A1',
          heightMm: 1.5,
          thicknessMm: 0.105,
          lengthMm: 360,
          end: 'tongue',
          inStock: 3,
        },
      },
    ],
    refused: [],
    words: [{ kind: 'end', key: 'tongue', printed: 'tongue', meaning: 'tongue', rows: 1, firstRow: 2 }],
  })
})

it('names every row that cannot be taken over, and takes the others', () => {
  const rows = [
    heading,
    ['A1', '1,50', '10,5', '360', 'tongue', '3'],
    ['', '', '', '', '', ''],
    ['A2', 'tall', '10,5', '360', 'tongue', '3'],
    ['A1', '1,20', '9', '300', 'hole', '1'],
    heading,
    ['', '1,20', '9', '300', 'hole', '1'],
    ['A3', '1,20', '9', '300', 'knot', '1'],
    ['A4', '1,20', '9', '300', 'hole', 'a few'],
    ['A5', '1,20', '9', '300', 'hole', ''],
  ]
  const { springs, refused } = readSpringTable(rows, settled(rows))
  expect(springs.map(({ row, spring }) => [row, spring.supplierRef])).toEqual([
    [2, 'A1'],
    [10, 'A5'],
  ])
  expect(refused.map(({ row, problem }) => [row, problem.key, problem.problem.code])).toEqual([
    [4, 'heightMm', 'unreadable'],
    [5, 'supplierRef', 'said-twice'],
    [7, 'supplierRef', 'missing'],
    [8, 'end', 'not-a-choice'],
    [9, 'inStock', 'not-a-count'],
  ])
  expect(refused[0]?.printed).toBe('A2 · tall · 10,5 · 360 · tongue · 3')
})

it.each([
  ['1,50 x 0,105 x 360 x 10,5', 'height-thickness-length-barrel'],
  ['1.50 × 0.105 × 360 × 10.5 mm', 'height-thickness-length-barrel'],
  ['1,50 / 0,105 / 360 / 10,5', 'height-thickness-length-barrel'],
  ['1,50 0,105 360 10,5', 'height-thickness-length-barrel'],
  ['15 x 10,5 x 360', 'tenths-hundredths-length'],
] as const)('reads the sizes in one cell: %s', (cell, order) => {
  const rows = [
    ['Ref', 'Sizes'],
    ['A1', cell],
  ]
  const [read] = readSpringTable(rows, { ...settled(rows), order }).springs
  expect(read?.spring).toMatchObject({ heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 })
})

it('refuses a cell with more figures than the order has, or one alone', () => {
  const rows = [
    ['Ref', 'Sizes'],
    ['A1', '1.5 x 0.1 x 360 x 10 x 3'],
    ['A2', '1.5'],
  ]
  const { refused } = readSpringTable(rows, settled(rows))
  expect(refused.map(({ problem }) => problem.problem.code)).toEqual(['not-so-many', 'not-so-many'])
})

it('reads a decimal comma before three digits where the list has commas, and asks where it has none', () => {
  const rows = [
    ['Ref', 'Height', 'Thickness', 'Length'],
    ['A1', '1,505', '0,105', '360'],
  ]
  expect(readSpringTable(rows, { ...settled(rows), decimalMark: ',' }).springs[0]?.spring.heightMm).toBe(1.505)
  const { refused } = readSpringTable(rows, { ...settled(rows), decimalMark: '.' })
  expect(refused[0]?.problem.problem.code).toBe('ambiguous')
})

it('names a spring by its sizes where the list has no numbers', () => {
  const rows = [
    ['Height', 'Thickness', 'Length'],
    ['1.50', '0.105', '360'],
  ]
  expect(readSpringTable(rows, settled(rows)).springs[0]?.spring).toEqual({
    supplierRef: '1.50 × 0.105 × 360 × –',
    heightMm: 1.5,
    thicknessMm: 0.105,
    lengthMm: 360,
  })
})

it('reads the words of a French list, passes over marks for nothing, and counts pieces', () => {
  const rows = [
    ['Réf.', 'Hauteur', 'Force (1/100)', 'Longueur', 'Accrochage', 'Matière', 'Quantité', 'Prix'],
    ['S 1', '1,50', '10,5', '360', 'bride glissante', 'acier inox', '12 pces', '12,50'],
    ['S 2', '1,20', '9', '–', 'crochet', 'acier', '-', '—'],
    ['S 3', '1,20', '9', '300', 'n/a', 'n. a.', '3 Stk.', 's.o.'],
    ['S 4', '1,20', '9', '300', 'Bride  Glissante', 'INOX', '', ''],
  ]
  const { springs, refused, words } = readSpringTable(rows, settled(rows))
  expect(springs.map(({ spring }) => spring)).toMatchObject([
    { end: 'slipping-bridle', material: 'stainless', inStock: 12, price: '12,50' },
    { end: 'tongue', material: 'carbon-steel' },
    { inStock: 3 },
    { end: 'slipping-bridle', material: 'stainless' },
  ])
  expect(springs[1]?.spring).not.toHaveProperty('lengthMm')
  expect(springs[1]?.spring).not.toHaveProperty('inStock')
  expect(springs[2]?.spring).not.toHaveProperty('end')
  expect(refused).toEqual([])
  expect(words.map(({ printed, meaning, rows: times, firstRow }) => [printed, meaning, times, firstRow])).toEqual([
    ['bride glissante', 'slipping-bridle', 2, 2],
    ['acier inox', 'stainless', 1, 2],
    ['crochet', 'tongue', 1, 3],
    ['acier', 'carbon-steel', 1, 3],
    ['INOX', 'stainless', 1, 5],
  ])
})

it('takes a word as its reader says, also where that is nothing or another choice', () => {
  const rows = [
    ['Ref', 'Height', 'Thickness', 'Length', 'End'],
    ['A1', '1.50', '0.105', '360', 'X7'],
    ['A2', '1.50', '0.105', '360', 'x 7'],
    ['A3', '1.50', '0.105', '360', 'Zaum'],
    ['A4', '1.50', '0.105', '360', '?'],
  ]
  const words = { end: { x7: 'hole', zaum: 'hole-with-brace', '?': '' } }
  const read = readSpringTable(rows, { ...settled(rows), words })
  expect(read.springs.map(({ spring }) => spring.end)).toEqual(['hole', 'hole', 'hole-with-brace', undefined])
  expect(readSpringTable(rows, settled(rows)).refused.map(({ row }) => row)).toEqual([2, 3, 5])
})

it('comes to the same, whether a list is read at once or stretch by stretch', () => {
  const rows = [
    heading,
    ...Array.from({ length: 50 }, (_, at) => [`A${at % 40}`, '1,50', '10,5', '360', at % 7 ? 'Loch' : 'knot', '3']),
  ]
  const reader = springTableReader(rows, settled(rows))
  for (let end = 0; reader.readTo(end); end += 7);
  expect(reader.table()).toEqual(readSpringTable(rows, settled(rows)))
  expect(reader.table().springs.length + reader.table().refused.length).toBe(50)
})

it('takes one column for each size, and every column of notes', () => {
  const rows = [
    ['Réf.', 'Hauteur', 'Force', 'Longueur', 'Désignation', 'Largeur', 'Remarques'],
    ['S 1', '1,50', '0,105', '360', 'ressort', '9', 'bleui'],
  ]
  const { springs } = readSpringTable(rows, settled(rows))
  expect(springs[0]?.spring).toMatchObject({ heightMm: 1.5, note: 'ressort; bleui' })
})
