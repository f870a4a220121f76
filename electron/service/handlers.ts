import { basename, dirname, join } from 'node:path'
import type { Handlers } from '../../core/api/contract.ts'
import { LignebookError } from '../../core/api/errors.ts'
import type { LibraryFile } from '../../core/exchange/library-file.ts'
import { writeLibraryFile } from '../../core/exchange/write-library-file.ts'
import { blankEntry } from '../../core/record/entry.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { changeAction } from '../../core/wording/change-action.ts'
import { listAttachments, readAttachment, removeAttachment } from '../store/attachments.ts'
import { backUp, lastBackup } from '../store/backup.ts'
import {
  countCalibers,
  countDisagreeing,
  pageOfCalibers,
  readCaliber,
  removeCaliber,
  saveCaliber,
} from '../store/calibers.ts'
import { discardDraft, keepDraft, latestDraft, readDraft } from '../store/draft.ts'
import { listGauges, removeGauge, saveGauge } from '../store/gauges.ts'
import { takeBackRevision } from '../store/history.ts'
import type { Library } from '../store/library.ts'
import { nearCalibers } from '../store/near.ts'
import { bookInOrder, listOrders, markOrders, removeOrder, saveOrder } from '../store/orders.ts'
import { listRevisions, nextRedo, nextUndo, redoLast, undoLast } from '../store/revisions.ts'
import { searchCalibers } from '../store/search.ts'
import { listSources, removeSource, saveSource, usesOfSource } from '../store/sources.ts'
import { allSprings, bookOut, removeSpring, saveSpring } from '../store/springs.ts'
import { addFile } from './add-attachment.ts'
import { exportFile } from './export-file.ts'
import { basesOf, lineOf, namesOfEntries, recountVariants, variantsOf } from './families.ts'
import { importFile } from './import-file.ts'
import { mergeTwo } from './merge-two.ts'
import { proofsSheet } from './proofs-sheet.ts'
import { proveEntry, sayProblem } from './prove-entry.ts'
import { readHistory } from './read-history.ts'
import { readImport } from './read-import.ts'
import { saveList } from './save-list.ts'
import { saveMany } from './save-many.ts'

export interface ServiceNeeds {
  readonly readDemo: () => LibraryFile
  /** The moment, ISO 8601 in UTC. */
  readonly now: () => string
  readonly makeFolder: (folder: string) => void
}

/** What stands behind the contract for an open library. */
export const createHandlers = (library: Library, { readDemo, now, makeFolder }: ServiceNeeds): Handlers => ({
  'library.status': async () => ({
    file: library.file,
    calibers: await countCalibers(library),
    disagreeing: await countDisagreeing(library),
    draft: await latestDraft(library),
    undo: await nextUndo(library),
    redo: await nextRedo(library),
    lastBackup: await lastBackup(library),
  }),
  'library.load-demo': async () => {
    // Written and read again, so that the demo comes in by the same door as any file.
    const demo = readImport('demo library.json', writeLibraryFile(readDemo()))
    return importFile(library, demo, { action: 'loading of the demo library', dryRun: false })
  },
  'library.back-up': async () => {
    const folder = join(dirname(library.file), 'backups')
    makeFolder(folder)
    const name = basename(library.file, '.sqlite')
    const moment = now().replace('T', ' ').replaceAll(':', '').replace(/\..*$/, '')
    const { file, calibers, sha256 } = await backUp(library, join(folder, `${name} ${moment}.sqlite`))
    return { file, calibers, sha256 }
  },
  'calibers.page': async (stretch) => ({
    total: await countCalibers(library),
    rows: await pageOfCalibers(library, stretch),
  }),
  'proofs.sheet': (stretch) => proofsSheet(library, stretch),
  'calibers.search': async ({ words, limit }) => ({ hits: await searchCalibers(library, words, limit) }),
  'calibers.near': async ({ except, limit, ...names }) => ({
    near: await nearCalibers(library, names, { except, limit }),
  }),
  'caliber.read': async ({ id }) => {
    const entry = await readCaliber(library, id)
    if (entry === null) throw new LignebookError('not-found', { what: 'This caliber' })
    return { id, entry }
  },
  'caliber.bases': async ({ caliberId, maker, basedOn }) => {
    const fields = { basedOn: [{ printed: basedOn }] }
    const stored = await lineOf(library, readEntry({ ...blankEntry(), maker, fields }).caliber, caliberId)
    return { bases: stored.map(({ entry }) => entry), ids: stored.map(({ id }) => id) }
  },
  'caliber.variants': async ({ id }) => ({ variants: await variantsOf(library, id) }),
  'caliber.save': async ({ caliberId, entry }) => {
    const bases = await basesOf(library, readEntry(entry).caliber, caliberId)
    const { problems, ...proved } = proveEntry(entry, bases)
    if (problems.length > 0) throw new LignebookError('unreadable-values', { problems: problems.map(sayProblem) })
    const before = caliberId === null ? null : await readCaliber(library, caliberId)
    const id = await saveCaliber(library, caliberId, entry, { ...proved, action: changeAction(before, entry) })
    await recountVariants(library, namesOfEntries([before, entry]))
    return { id }
  },
  'calibers.save-many': (rows) => saveMany(library, rows),
  'caliber.merge': async (ids) => {
    await mergeTwo(library, ids)
    return {}
  },
  'caliber.remove': async ({ id }) => {
    const before = await readCaliber(library, id)
    await removeCaliber(library, id)
    await recountVariants(library, namesOfEntries([before]))
    return {}
  },
  'draft.read': async ({ caliberId }) => ({ draft: await readDraft(library, caliberId) }),
  'draft.keep': async (draft) => {
    await keepDraft(library, draft)
    return {}
  },
  'draft.discard': async ({ caliberId }) => {
    await discardDraft(library, caliberId)
    return {}
  },
  'sources.list': async () => ({ sources: await listSources(library) }),
  'source.save': async ({ source }) => {
    await saveSource(library, source)
    return {}
  },
  'source.uses': async ({ key, limit }) => usesOfSource(library, key, limit),
  'source.remove': async ({ key }) => {
    await removeSource(library, key)
    return {}
  },
  'springs.all': async () => ({ springs: await allSprings(library) }),
  'spring.save': async ({ id, spring }) => ({ id: await saveSpring(library, id, spring) }),
  'spring.remove': async ({ id }) => {
    await removeSpring(library, id)
    return {}
  },
  'spring.book-out': async ({ id, count, reason }) => ({ left: await bookOut(library, id, count, reason) }),
  'springs.save-many': (list) => saveList(library, list),
  'orders.list': async () => ({ orders: await listOrders(library) }),
  'order.save': async ({ id, line }) => ({ id: await saveOrder(library, id, { ...line, at: line.at ?? now() }) }),
  'order.remove': async ({ id }) => {
    await removeOrder(library, id)
    return {}
  },
  'order.book-in': ({ id }) => bookInOrder(library, id),
  'orders.mark': async ({ ids, state }) => {
    await markOrders(library, ids, state)
    return {}
  },
  'gauges.list': async () => ({ gauges: await listGauges(library) }),
  'gauge.save': async ({ id, table }) => ({ id: await saveGauge(library, id, table) }),
  'gauge.remove': async ({ id }) => {
    await removeGauge(library, id)
    return {}
  },
  'attachments.list': async (place) => ({ attachments: await listAttachments(library, place) }),
  'attachment.add': (file) => addFile(library, file),
  'attachment.read': async ({ sha256 }) => {
    const kept = await readAttachment(library, sha256)
    if (kept === null) throw new LignebookError('not-found', { what: 'This picture or scan' })
    return { type: kept.type, name: kept.name, data: kept.bytes.toString('base64') }
  },
  'attachment.remove': async ({ useId }) => {
    await removeAttachment(library, useId)
    return {}
  },
  'history.undo': async () => {
    const undone = await undoLast(library)
    if (undone !== null) await recountVariants(library)
    return { undone }
  },
  'history.redo': async () => {
    const redone = await redoLast(library)
    if (redone !== null) await recountVariants(library)
    return { redone }
  },
  'history.list': async ({ limit, before }) => ({ revisions: await listRevisions(library, limit, before) }),
  'history.read': async ({ id, ...stretch }) => readHistory(library, id, stretch),
  'history.take-back': async ({ id }) => {
    const done = await takeBackRevision(library, id)
    await recountVariants(library)
    return { done }
  },
  'exchange.import': ({ name, text, dryRun }) =>
    importFile(library, readImport(name, text), { action: `import of ${name}`, dryRun }),
  'exchange.export': async ({ caliberId }) => {
    if (caliberId !== undefined && (await readCaliber(library, caliberId)) === null)
      throw new LignebookError('not-found', { what: 'This caliber' })
    return { text: await exportFile(library, caliberId) }
  },
})
