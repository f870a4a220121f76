import { expect, test } from 'vitest'
import { allAttachments, bringInAttachments, isAttached } from '../../../electron/store/attachment-exchange.ts'
import { removeCaliber } from '../../../electron/store/calibers.ts'
import { beginRevision } from '../../../electron/store/revisions.ts'
import { saveSource } from '../../../electron/store/sources.ts'
import { smallPng } from '../../support/small-files.ts'
import { entryOf, save, temporaryLibrary } from '../../support/temporary-library.ts'

const sha256 = 'b'.repeat(64)
const kept = { sha256, type: 'image/png' as const, name: 'plate.png', bytes: smallPng(), extra: '{}' }
const rest = { page: null, position: null, note: null, extra: '{}' }
const atCaliber = { maker: 'VERRIN', designation: '17-220', ...rest }
const atSource = { source: 'hb', ...rest, page: '44' }

test('what is brought in stands once at each place by its name, and is told by the names of its places', async () => {
  const library = await temporaryLibrary()
  const caliberId = await save(library, entryOf('Verrin', '17-220'))
  await saveSource(library, { key: 'hb', title: 'Handbook' })
  expect(isAttached(library, sha256, atCaliber)).toBe('not-yet')
  expect(isAttached(library, sha256, { ...atSource, source: 'none' })).toBe('nowhere')
  bringInAttachments(library, beginRevision(library, 'import'), [
    { ...kept, uses: [atCaliber, atCaliber, atSource, { ...atSource, source: 'none' }] },
  ])
  expect(isAttached(library, sha256, atCaliber)).toBe('there')
  expect((await allAttachments(library, undefined)).get(sha256)).toMatchObject([
    { maker: 'Verrin', designation: '17-220', source: null, position: 0 },
    { maker: null, source: 'hb', page: '44', position: 0 },
  ])
  expect((await allAttachments(library, caliberId)).get(sha256)).toHaveLength(1)
  await removeCaliber(library, caliberId)
  expect((await allAttachments(library, undefined)).get(sha256)).toHaveLength(1)
})
