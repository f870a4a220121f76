import { expect, test } from 'vitest'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import {
  countCalibers,
  countDisagreeing,
  eachCaliber,
  findCaliber,
  pageOfCalibers,
  readCaliber,
  removeCaliber,
  saveCaliber,
  saveCalibers,
} from '../../../electron/store/calibers.ts'
import { listRevisions, undoLast } from '../../../electron/store/revisions.ts'
import { searchCalibers } from '../../../electron/store/search.ts'
import { madeUpCalibers } from '../../support/made-up-calibers.ts'
import { checkWordIndex, entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const item = (entry: CaliberEntry, id: number | null = null) => ({
  id,
  entry,
  values: readEntry(entry).caliber,
  disagree: 0,
  doubtful: 0,
})

test('the summary in the list says what the chosen readings say', async () => {
  const library = await temporaryLibrary()
  for (const entry of madeUpCalibers(20, 5)) {
    const id = await save(library, entry)
    const [reading] = library.connection
      .prepare("select number, printed from reading where caliber_id = ? and field = 'diameterMm' and chosen")
      .all(id) as { number: number; printed: string }[]
    const row = (await pageOfCalibers(library, { offset: 0, limit: 500 })).find((each) => each.id === id)
    expect(row).toMatchObject({ diameterMm: reading?.number, sizePrinted: reading?.printed })
  }
})

test('the list goes by maker, then by designation with its numbers in order', async () => {
  const library = await temporaryLibrary()
  for (const name of ['17-220', '17-5', '9-1']) await save(library, entryOf('Verrin', name))
  await save(library, entryOf('Oldotte', '3'))
  const page = await pageOfCalibers(library, { offset: 0, limit: 10 })
  expect(page.map(({ designation }) => designation)).toEqual(['3', '9-1', '17-5', '17-220'])
  expect((await pageOfCalibers(library, { offset: 2, limit: 1 })).map((row) => row.designation)).toEqual(['17-5'])
})

test('a name may stand only once, whatever its case, and nothing is written when it does', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '17-220'))
  const twin = save(library, entryOf('VERRIN', '17-220 ', { beatRateVph: '5/s' }))
  await expect(twin).rejects.toMatchObject({ failure: { code: 'same-name' } })
  expect(await countCalibers(library)).toBe(1)
  expect(await findCaliber(library, 'verrin', '17-220')).toBe(id)
  expect(await listRevisions(library, 10)).toHaveLength(1)
})

test('a caliber that is not there can be neither changed nor removed, and no revision says so', async () => {
  const library = await temporaryLibrary()
  const missing = { failure: { code: 'not-found' } }
  await expect(save(library, entryOf('Verrin', '17-220'), 7)).rejects.toMatchObject(missing)
  await expect(removeCaliber(library, 7)).rejects.toMatchObject(missing)
  expect(await readCaliber(library, 7)).toBeNull()
  expect(await listRevisions(library, 10)).toEqual([])
})

test('calibers of which a proof disagrees are counted apart', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '1'))
  const entry = entryOf('Verrin', '2')
  const values = readEntry(entry).caliber
  await saveCaliber(library, null, entry, { values, disagree: 2, doubtful: 1, action: 'entry of Verrin 2' })
  expect([await countCalibers(library), await countDisagreeing(library)]).toEqual([2, 1])
  expect((await pageOfCalibers(library, { offset: 1, limit: 1 }))[0]).toMatchObject({ disagree: 2, doubtful: 1 })
})

test('an import is one step, all or nothing, in step with the search also when it is large', async () => {
  const library = await temporaryLibrary()
  const entries = [...madeUpCalibers(2001, 3)]
  await saveCalibers(
    library,
    entries.map((entry) => item(entry)),
    'import of handbook.json (2001 calibers)',
  )
  checkWordIndex(library)
  const [first] = entries
  expect(await searchCalibers(library, `${first?.maker} ${first?.designation}`, 5)).toMatchObject([
    { maker: first?.maker, designation: first?.designation },
  ])
  const doubled = [item(entryOf('Sole', '1')), item(entryOf('Sole', '1'))]
  await expect(saveCalibers(library, doubled, 'import of x')).rejects.toMatchObject({ failure: { code: 'same-name' } })
  expect(await countCalibers(library)).toBe(2001)
  expect(await undoLast(library)).toBe('import of handbook.json (2001 calibers)')
  expect(await countCalibers(library)).toBe(0)
  checkWordIndex(library)
})

test('every caliber is walked through once', async () => {
  const library = await temporaryLibrary()
  await saveCalibers(
    library,
    [...madeUpCalibers(250, 9)].map((entry) => item(entry)),
    'import',
  )
  const ids = new Set<number>()
  for await (const { id } of eachCaliber(library)) ids.add(id)
  expect(ids.size).toBe(250)
})
