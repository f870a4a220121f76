import { expect, test } from 'vitest'
import { nearCalibers } from '../../../electron/store/near.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const shelf = async () => {
  const library = await temporaryLibrary()
  const ids = {
    plain: await save(library, entryOf('Verrin', '17-220', { alsoKnownAs: 'Tamsor 5, Lune' })),
    neighbour: await save(library, entryOf('Verrin', '17-221')),
    misspelt: await save(library, entryOf('Verin', '17.220')),
    other: await save(library, entryOf('Brandsund', '17-220')),
  }
  const near = async (maker: string, designation: string, alsoKnownAs: string[] = [], except: number | null = null) =>
    (await nearCalibers(library, { maker, designation, alsoKnownAs }, { except, limit: 5 })).map(({ id, why }) => [
      id,
      why,
    ])
  return { ids, near }
}

test('the likeliest stands first, and another maker with the same number is none', async () => {
  const { ids, near } = await shelf()
  expect(await near('VERRIN', '17220')).toEqual([
    [ids.plain, 'same-name'],
    [ids.misspelt, 'other-maker-spelling'],
    [ids.neighbour, 'one-character'],
  ])
  expect(await near('Brandsund', '17-220', [], ids.other)).toEqual([])
})

test('another name finds its caliber, typed as a designation or among the other names', async () => {
  const { ids, near } = await shelf()
  expect(await near('Quillmark', 'tamsor-5')).toEqual([[ids.plain, 'other-name']])
  expect(await near('Quillmark', 'No. 9', ['Lune'])).toEqual([[ids.plain, 'other-name']])
})

test('the caliber being changed is not near itself, and nothing is near nothing', async () => {
  const { ids, near } = await shelf()
  expect((await near('Verrin', '17-220', [], ids.plain)).map(([id]) => id)).toEqual([ids.misspelt, ids.neighbour])
  expect(await near('Verrin', '')).toEqual([])
  expect(await near('', '17-220')).toEqual([])
  expect(await near('Verrin', '- .')).toEqual([])
})
