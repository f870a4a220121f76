import { expect, test } from 'vitest'
import { wordImport } from '../../../core/wording/import-report.ts'

const counts = { added: 1, updated: 2, unchanged: 0, refused: [{ path: 'row 5', reason: 'No.' }], kept: ['springs'] }

test('each fact of an import is a line, with the reasons under what was left out', () => {
  expect(wordImport(counts, false)).toEqual([
    '1 caliber added.',
    '2 calibers updated.',
    '1 caliber left out whole, for these reasons:',
    '  row 5: No.',
    'Kept for export, though this version has no page for it: springs.',
  ])
})

test('a dry run says what would be done', () => {
  expect(wordImport(counts, true)[0]).toBe('1 caliber would be added.')
})

test('an empty file is said to be so', () => {
  expect(wordImport({ added: 0, updated: 0, unchanged: 0, refused: [], kept: [] }, false)).toEqual([
    'The file holds no calibers.',
  ])
})

test('gauge tables are counted and refused by their own name', () => {
  const counts = {
    ...{ added: 0, updated: 0, unchanged: 0, kept: [] },
    gauges: { added: 2, updated: 1, unchanged: 0, removed: 0 },
    refused: [{ path: 'gauges[3].rows[0].mm', reason: '12 mm is outside what is possible.' }],
  }
  expect(wordImport(counts, true)).toEqual([
    '2 gauge tables would be added.',
    '1 gauge table would be updated.',
    '1 gauge table would be left out whole, for these reasons:',
    '  gauges[3].rows[0].mm: 12 mm is outside what is possible.',
  ])
})
