import { expect, test } from 'vitest'
import { answered, fileOf, goodTrain, libraryOf, refused, runCaptured, wrongTrain } from './run-captured.ts'

test('what the search box finds is listed with the reason, the nearest first', async () => {
  const library = await libraryOf(wrongTrain, goodTrain)
  const { status, document } = await answered<{ calibers: unknown[] }>('search', '--library', library, '17', '220')
  expect(status).toBe(0)
  expect(Object.keys(document)).toEqual(['calibers'])
  expect(document.calibers[0]).toEqual({ maker: 'Verrin', designation: '17-220', why: 'The designation is 17-220.' })
  const { out } = await runCaptured('search', '--library', library, '17220')
  expect(out).toMatch(/^Verrin +17-220 +The designation is 17-220\.\n/)
})

test('where nothing is found the status is 1', async () => {
  const library = await libraryOf(goodTrain)
  expect(await answered('search', '--library', library, 'qqqqqqqq')).toEqual({ status: 1, document: { calibers: [] } })
  expect((await runCaptured('search', '--library', library, 'qqqqqqqq')).out).toContain("'qqqqqqqq'")
})

test('without words, or without a library, there is nothing to search', async () => {
  const foreign = fileOf('this is no library, only a text of some length', 'foreign.sqlite')
  expect(await refused('search', '--library', foreign, 'x')).toContain('not a Lignebook library')
  expect(await refused('search', '--library', foreign)).toContain('what to search for')
  expect(await refused('search', '--library', `${foreign}.none`, 'x', '--json')).toContain('is not there')
})
