import { expect, test } from 'vitest'
import { LignebookError } from '../../../core/api/errors.ts'
import { readImport } from '../../../electron/service/read-import.ts'

const document = JSON.stringify({
  lignebook: 1,
  calibers: [{ maker: 'Verrin', designation: '17-220', fields: { thirdWheel: 75 } }],
  springs: [{ supplierRef: 'S1', heightMm: 1.5, thicknessMm: 0.1 }],
  madeBy: 'a newer version',
})
const table = 'maker;designation;thirdWheel\r\nVerrin;17-220;75\r\n'
const failureOf = (name: string, text: string) => {
  try {
    readImport(name, text)
  } catch (error) {
    if (error instanceof LignebookError) return error.failure
    throw error
  }
  return null
}

test('a document gives whole calibers with their place, and keeps what it holds beside them', () => {
  const { calibers, springs, sections, refused } = readImport('in.json', document)
  expect(calibers).toMatchObject([
    { path: 'calibers[0]', partial: false, entry: { fields: { thirdWheel: [{ printed: '75' }] } } },
  ])
  expect(springs).toEqual([{ supplierRef: 'S1', heightMm: 1.5, thicknessMm: 0.1 }])
  expect(sections).toEqual({ movements: [], others: { madeBy: 'a newer version' } })
  expect(refused).toEqual([])
})

test('a table gives parts of calibers with their row, whatever separates its cells', () => {
  for (const text of [table, table.replaceAll(';', ','), table.replaceAll(';', '\t'), `\ufeff${table}`]) {
    expect(readImport('in.csv', text).calibers).toMatchObject([
      { path: 'row 2', partial: true, entry: { maker: 'Verrin', fields: { thirdWheel: [{ printed: '75' }] } } },
    ])
  }
})

test('a file whose name says nothing is known by its first brace', () => {
  expect(readImport('pasted', ` \n${document}`).calibers[0]?.path).toBe('calibers[0]')
  expect(readImport('pasted', table).calibers[0]?.path).toBe('row 2')
  expect(failureOf('in.json', table)).toMatchObject({ details: { file: 'in.json', where: 'line 1, position 1' } })
})

test('a row that cannot be used is left out with its reason; the others come in', () => {
  const text = 'maker,designation,thirdWheel\nVerrin,,75\nVerrin,2,75,76\nVerrin,3,75\n'
  const { calibers, refused } = readImport('in.csv', text)
  expect(calibers.map(({ path }) => path)).toEqual(['row 4'])
  expect(refused).toEqual([
    { path: 'row 2', reason: expect.stringContaining('the designation is missing') },
    { path: 'row 3', reason: expect.stringContaining('more cells than there are headings') },
  ])
})

test.each([
  ['', 'the table is empty'],
  ['maker,thirdWheel\nVerrin,75\n', 'no column is headed designation'],
  ['maker,designation,Maker\nVerrin,1,Dorn\n', 'column 3, Maker, stands there twice'],
])('a table without its headings is refused whole: %j', (text, what) => {
  expect(failureOf('in.csv', text)).toMatchObject({
    code: 'file-not-readable',
    details: { file: 'in.csv', where: 'row 1', what: expect.stringContaining(what) },
  })
})
