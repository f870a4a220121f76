import { expect, test } from 'vitest'
import type { CaliberEntry } from '../../../core/exchange/library-file.ts'
import { readEntry } from '../../../core/record/read-entry.ts'
import {
  countCalibers,
  eachCaliber,
  findCaliber,
  pageOfCalibers,
  readCaliber,
  removeCaliber,
  saveCalibers,
} from '../../../electron/store/calibers.ts'
import { discardDraft, keepDraft, readDraft } from '../../../electron/store/draft.ts'
import { keepSections, readKeptSections } from '../../../electron/store/kept-sections.ts'
import { listRevisions, nextRedo, nextUndo, redoLast, undoLast } from '../../../electron/store/revisions.ts'
import { searchCalibers } from '../../../electron/store/search.ts'
import { listSources, saveSource } from '../../../electron/store/sources.ts'
import { madeUpCalibers } from '../../support/made-up-calibers.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const full = (): CaliberEntry => ({
  ...entryOf('Verrin', '17-220', { diameterMm: "17'''", beatRateVph: '18 000', notes: 'Grüße' }),
  fields: {
    diameterMm: [{ printed: "17'''" }],
    springLengthMm: [
      { printed: '480', source: 'hb1', page: '44', chosen: true },
      { printed: '500', source: 'hb2', note: 'later edition', later: { kept: 1 } },
    ],
    beatRateVph: [{ printed: '18 000' }],
    someLaterField: [{ printed: '7' }],
  },
  jewels: [{ place: 'balance', kind: 'hole', count: 2, source: 'hb1', later: true }],
  depths: [{ driver: 'barrel', driven: 'centre', driverPitchMm: '1,2' }],
  parts: [{ part: 'mainspring', number: '1202' }],
  stripOrder: [{ part: 'balance cock', after: ['dial'], caution: 'mind the spring' }],
  later: { deep: ['yes'] },
})

const item = (entry: CaliberEntry, id: number | null = null) => ({
  id,
  entry,
  values: readEntry(entry).caliber,
  disagree: 0,
  doubtful: 0,
})

test('an entry comes back exactly as it was saved, with what this version does not know', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, full())
  expect(await readCaliber(library, id)).toEqual(full())
  expect(await readCaliber(library, id + 1)).toBeNull()
})

test('the summary in the list says what the chosen readings say', async () => {
  const library = await temporaryLibrary()
  for (const entry of madeUpCalibers(60, 5)) {
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

test('undo and redo walk through every change, also a removal, and give back the same id', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, full())
  const changed = { ...full(), parts: [] }
  await save(library, changed, id)
  await removeCaliber(library, id)
  expect(await nextUndo(library)).toBe('removal of Verrin 17-220')
  expect(await undoLast(library)).toBe('removal of Verrin 17-220')
  expect(await readCaliber(library, id)).toEqual(changed)
  expect(await undoLast(library)).toBe('change of Verrin 17-220')
  expect(await readCaliber(library, id)).toEqual(full())
  expect(await undoLast(library)).toBe('entry of Verrin 17-220')
  expect(await countCalibers(library)).toBe(0)
  expect(await undoLast(library)).toBeNull()
  expect([await redoLast(library), await redoLast(library)]).toEqual([
    'entry of Verrin 17-220',
    'change of Verrin 17-220',
  ])
  expect(await readCaliber(library, id)).toEqual(changed)
  expect(await nextRedo(library)).toBe('removal of Verrin 17-220')
})

test('a new change after an undo ends the redo but keeps what was taken back to look at', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '1'))
  await undoLast(library)
  await save(library, entryOf('Verrin', '2'))
  expect(await nextRedo(library)).toBeNull()
  expect(await redoLast(library)).toBeNull()
  const lines = await listRevisions(library, 10)
  expect(lines.map(({ action, takenBack }) => [action, takenBack])).toEqual([
    ['entry of Verrin 2', false],
    ['entry of Verrin 1', true],
  ])
})

test('an import is one step, all or nothing, in step with the search also when it is large', async () => {
  const library = await temporaryLibrary()
  const entries = [...madeUpCalibers(2100, 3)]
  await saveCalibers(
    library,
    entries.map((entry) => item(entry)),
    'import of handbook.json (2100 calibers)',
  )
  library.connection.exec("insert into search_words (search_words, rank) values ('integrity-check', 1)")
  const [first] = entries
  expect(await searchCalibers(library, `${first?.maker} ${first?.designation}`, 5)).toMatchObject([
    { maker: first?.maker, designation: first?.designation },
  ])
  const doubled = [item(entryOf('Sole', '1')), item(entryOf('Sole', '1'))]
  await expect(saveCalibers(library, doubled, 'import of x')).rejects.toMatchObject({ failure: { code: 'same-name' } })
  expect(await countCalibers(library)).toBe(2100)
  expect(await undoLast(library)).toBe('import of handbook.json (2100 calibers)')
  expect(await countCalibers(library)).toBe(0)
  library.connection.exec("insert into search_words (search_words, rank) values ('integrity-check', 1)")
})

test('every caliber is walked through once', async () => {
  const library = await temporaryLibrary()
  await saveCalibers(
    library,
    [...madeUpCalibers(450, 9)].map((entry) => item(entry)),
    'import',
  )
  const ids = new Set<number>()
  for await (const { id } of eachCaliber(library)) ids.add(id)
  expect(ids.size).toBe(450)
})

test('a draft outlives everything but its saving or being let go', async () => {
  const library = await temporaryLibrary()
  expect(await readDraft(library)).toBeNull()
  const id = await save(library, entryOf('Verrin', '1'))
  await keepDraft(library, { caliberId: null, entry: entryOf('Half', '') })
  await keepDraft(library, { caliberId: id, entry: full() })
  expect(await readDraft(library)).toEqual({ caliberId: id, entry: full() })
  await save(library, full(), id)
  expect(await readDraft(library)).toEqual({ caliberId: null, entry: entryOf('Half', '') })
  await discardDraft(library)
  expect(await readDraft(library)).toBeNull()
})

test('a source keeps keys of a newer version and counts its readings', async () => {
  const library = await temporaryLibrary()
  await saveSource(library, { key: 'hb1', title: 'Handbook', year: 1931, unitsAsPrinted: 'ligne', later: 'x' })
  await save(library, full())
  expect(await listSources(library)).toEqual([
    { key: 'hb1', title: 'Handbook', year: 1931, unitsAsPrinted: 'ligne', later: 'x', values: 1 },
  ])
})

test('sections without a page are kept, each line once', async () => {
  const library = await temporaryLibrary()
  const sections = { springs: [{ supplierRef: 'A1' }], movements: [], others: { later: { a: 1 } } }
  await keepSections(library, sections)
  await keepSections(library, { ...sections, springs: [{ supplierRef: 'A1' }, { supplierRef: 'B2' }] })
  expect(await readKeptSections(library)).toEqual({
    ...sections,
    springs: [{ supplierRef: 'A1' }, { supplierRef: 'B2' }],
  })
})
