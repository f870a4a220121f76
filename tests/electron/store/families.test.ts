import { expect, test } from 'vitest'
import { pageOfCalibers } from '../../../electron/store/calibers.ts'
import { calibersNamed, countProofsAgain, listVariants } from '../../../electron/store/families.ts'
import { nextUndo } from '../../../electron/store/revisions.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

test('a caliber is found by its designation and its other names, of whatever maker', async () => {
  const library = await temporaryLibrary()
  const own = await save(library, entryOf('Verrin', '17-220', { alsoKnownAs: 'Sarelle 17' }))
  const other = await save(library, entryOf('Tolvaart', '17 220'))
  const idsOf = async (name: string) => (await calibersNamed(library, name)).map(({ id }) => id)
  expect(await idsOf('17-220')).toEqual([own, other])
  expect(await idsOf('sarelle 17')).toEqual([own])
  expect(await idsOf('17-22')).toEqual([])
  expect(await idsOf(' – ')).toEqual([])
  expect((await calibersNamed(library, 'Sarelle 17'))[0]?.entry.designation).toBe('17-220')
})

test('variants are listed with the name of their base', async () => {
  const library = await temporaryLibrary()
  await save(library, entryOf('Verrin', '17-220'))
  const id = await save(library, entryOf('Verrin', '17-221', { basedOn: '17-220' }))
  expect(await listVariants(library)).toEqual([{ id, basedOn: '17-220' }])
})

test('counting proofs again is no change that could be taken back', async () => {
  const library = await temporaryLibrary()
  const id = await save(library, entryOf('Verrin', '17-220'))
  await countProofsAgain(library, [{ id, disagree: 2, doubtful: 1 }])
  expect(await pageOfCalibers(library, { offset: 0, limit: 1 })).toMatchObject([{ disagree: 2, doubtful: 1 }])
  expect(await nextUndo(library)).toBe('entry of Verrin 17-220')
})
