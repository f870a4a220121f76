import { afterEach, beforeEach, expect, test } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { smallJpeg, smallPdf, smallPng } from '../../support/small-files.ts'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let full: TestLibrary
let empty: TestLibrary
beforeEach(async () => {
  full = await openTestLibrary()
  empty = await openTestLibrary()
  await full.call('source.save', { source: { key: 'hb', title: 'Handbook' } })
  const ids = []
  for (const designation of ['17-220', '17-221'])
    ids.push(
      (await full.call('caliber.save', { caliberId: null, entry: { ...blankEntry(), maker: 'Verrin', designation } }))
        .id,
    )
  const [first = 0, second = 0] = ids
  const add = (name: string, bytes: Buffer, place: { caliberId: number } | { source: string; page: string }) =>
    full.call('attachment.add', { name, data: bytes.toString('base64'), place })
  await add('plate.png', smallPng(), { caliberId: second })
  await add('train.jpg', smallJpeg(), { caliberId: second })
  await add('plate.png', smallPng(), { caliberId: first })
  await add('pages.pdf', smallPdf('a', 'b'), { source: 'hb', page: '40' })
})
afterEach(() => Promise.all([full.close(), empty.close()]))

interface Written {
  attachments?: { sha256: string; name: string; type: string; data: string; uses: Record<string, unknown>[] }[]
}
const exported = async (library: TestLibrary, caliberId?: number) =>
  (await library.call('exchange.export', caliberId === undefined ? {} : { caliberId })).text
const bringIn = (text: string, dryRun = false) => empty.call('exchange.import', { name: 'library.json', text, dryRun })

test('import after export gives the same library, pictures and scans with their places included', async () => {
  const text = await exported(full)
  expect((JSON.parse(text) as Written).attachments).toHaveLength(3)
  expect((await bringIn(text, true)).attachments).toBe(3)
  expect(await exported(empty)).not.toContain('attachments')
  expect(await bringIn(text)).toMatchObject({ added: 2, attachments: 3, refused: [] })
  expect(await exported(empty)).toBe(text)
  expect(await bringIn(text)).toMatchObject({ added: 0, attachments: 0, refused: [] })
  expect(await exported(empty)).toBe(text)
})

test('what a newer version wrote at a picture or its place is given back', async () => {
  const file = JSON.parse(await exported(full)) as Written
  for (const attachment of file.attachments ?? []) {
    Object.assign(attachment, { xTurned: 90 })
    for (const use of attachment.uses) Object.assign(use, { xShown: { from: 1 } })
  }
  await bringIn(JSON.stringify(file))
  expect(JSON.parse(await exported(empty))).toEqual(file)
})

test('the import is one step: undo takes calibers and pictures back, redo brings both in again', async () => {
  const text = await exported(full)
  const before = await exported(empty)
  await bringIn(text)
  await empty.call('history.undo', {})
  const after = JSON.parse(await exported(empty)) as Written
  expect(after.attachments).toBeUndefined()
  expect({ ...after, sources: [] }).toEqual(JSON.parse(before))
  await empty.call('history.redo', {})
  expect(await exported(empty)).toBe(text)
})

test('one caliber is exported with its own pictures', async () => {
  const id = (await full.call('calibers.page', { offset: 0, limit: 1 })).rows[0]?.id
  const { attachments } = JSON.parse(await exported(full, id)) as Written
  expect(attachments).toMatchObject([
    { name: 'plate.png', uses: [{ caliber: { designation: '17-220' }, position: 0 }] },
  ])
})

test('a picture that is not what its file says is refused with its place and the reason; the rest comes in', async () => {
  const file = JSON.parse(await exported(full)) as Required<Written>
  const [one, two, three] = file.attachments
  if (!one || !two || !three) throw new Error('three attachments were exported')
  const from = { png: smallPng(3).toString('base64'), html: Buffer.from('<html>').toString('base64') }
  file.attachments = [
    { ...one, data: from.png },
    { ...one, data: from.html },
    { ...one, data: '%' },
    { ...one, type: 'image/gif' },
    { ...one, uses: [] },
    { ...one, uses: [{ caliber: { maker: 'Nobody', designation: '1' } }, ...one.uses] },
    two,
    three,
  ]
  const { refused, attachments } = await bringIn(JSON.stringify(file))
  expect(attachments).toBe(3)
  expect(refused.map(({ path }) => path)).toEqual([
    'attachments[0].sha256',
    'attachments[1].data',
    'attachments[2].data',
    'attachments[3].type',
    'attachments[4].uses',
    'attachments[5].uses[0]',
  ])
  expect(refused[0]?.reason).toBe(
    `${one.name} has other bytes than its SHA-256 says, so the file was changed or damaged. Export it again.`,
  )
})

test('an attachment without its bytes makes the file unreadable, with the place', async () => {
  const text = JSON.stringify({ lignebook: 1, attachments: [{ sha256: 'x', name: 'a', type: 'image/png' }] })
  await expect(bringIn(text)).rejects.toMatchObject({
    failure: { code: 'file-not-readable', details: { where: 'attachments[0].data' } },
  })
})
