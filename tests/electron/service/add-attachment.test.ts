import { afterEach, beforeEach, expect, test } from 'vitest'
import { blankEntry } from '../../../core/record/entry.ts'
import { smallJpeg, smallPdf, smallPng, smallSvg } from '../../support/small-files.ts'
import { openTestLibrary, type TestLibrary } from './open-test-library.ts'

let library: TestLibrary
let caliberId = 0
beforeEach(async () => {
  library = await openTestLibrary()
  const entry = { ...blankEntry(), maker: 'Verrin', designation: '17-220' }
  caliberId = (await library.call('caliber.save', { caliberId: null, entry })).id
})
afterEach(() => library.close())

const add = (name: string, bytes: Buffer) =>
  library.call('attachment.add', { name, data: bytes.toString('base64'), place: { caliberId } })
const listed = async () => (await library.call('attachments.list', { caliberId })).attachments

test('a picture, a photograph and a PDF are taken, listed and read back', async () => {
  const files = { 'plate.png': smallPng(), 'train.jpg': smallJpeg(), 'sheet.pdf': smallPdf('Verrin') }
  for (const [name, bytes] of Object.entries(files)) await add(name, bytes)
  const lines = await listed()
  expect(lines.map(({ name, type }) => [name, type])).toEqual([
    ['plate.png', 'image/png'],
    ['train.jpg', 'image/jpeg'],
    ['sheet.pdf', 'application/pdf'],
  ])
  for (const { sha256, name } of lines) {
    const { data } = await library.call('attachment.read', { sha256 })
    expect(data).toBe(files[name as keyof typeof files].toString('base64'))
  }
})

test('a picture can stand at a page of a source', async () => {
  await library.call('source.save', { source: { key: 'hb', title: 'Handbook' } })
  const data = smallPng().toString('base64')
  await library.call('attachment.add', { name: 'p44.png', data, place: { source: 'hb', page: '44' } })
  const { attachments } = await library.call('attachments.list', { source: 'hb' })
  expect(attachments).toMatchObject([{ name: 'p44.png', source: 'hb', page: '44', caliberId: null }])
  expect((await library.call('attachments.list', {})).attachments).toEqual([])
})

test.each([
  ['an SVG named .png', 'plate.png', smallSvg, 'svg'],
  ['a web page named .pdf', 'sheet.pdf', Buffer.from('<!doctype html><script>1</script>'), 'html'],
  ['a program named .jpg', 'train.jpg', Buffer.from('MZ\u0090\u0000', 'latin1'), 'program'],
  ['half a PNG header', 'plate.png', smallPng().subarray(0, 20), 'cut-short'],
  ['more than 25 MB', 'large.png', Buffer.alloc(25_000_001), 'too-large'],
  ['nothing', 'empty.png', Buffer.alloc(0), 'empty'],
])('%s is refused, and nothing is kept', async (_, name, bytes, fault) => {
  await expect(add(name, bytes)).rejects.toMatchObject({
    failure: { code: 'attachment-refused', details: { name, fault } },
  })
  expect(await listed()).toEqual([])
})

test('a removal is taken back by undo, and what is not there cannot be read', async () => {
  const { useId, sha256 } = await add('plate.png', smallPng())
  await library.call('attachment.remove', { useId })
  expect(await listed()).toEqual([])
  expect(await library.call('history.undo', {})).toEqual({ undone: 'removal of plate.png from Verrin 17-220' })
  expect(await listed()).toMatchObject([{ id: useId, sha256 }])
  await expect(library.call('attachment.read', { sha256: 'x' })).rejects.toMatchObject({
    failure: { code: 'not-found' },
  })
})

test('a name keeps no folder and nothing that cannot be seen', async () => {
  await add('C:\\scans\\..\\pla\u202ete\u0000.png', smallPng())
  await add('../', smallPng(10))
  expect((await listed()).map(({ name }) => name)).toEqual(['plate.png', 'scan'])
})
