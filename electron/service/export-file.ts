import type { FileCaliber } from '../../core/exchange/library-file.ts'
import { writeLibraryFile } from '../../core/exchange/write-library-file.ts'
import { closeEntry } from '../../core/record/entry.ts'
import { eachCaliber } from '../store/calibers.ts'
import { listGauges } from '../store/gauges.ts'
import { readKeptSections } from '../store/kept-sections.ts'
import type { Library } from '../store/library.ts'
import { listOrders } from '../store/orders.ts'
import { listSources } from '../store/sources.ts'
import { allSprings } from '../store/springs.ts'
import { exportAttachments } from './export-attachments.ts'

/** The library as a file, or one caliber of it with the sources that it names. */
export const exportFile = async (library: Library, caliberId: number | undefined): Promise<string> => {
  const calibers: FileCaliber[] = []
  for await (const { id, entry } of eachCaliber(library)) {
    if (caliberId === undefined || id === caliberId) calibers.push(closeEntry(entry))
  }
  const attachments = await exportAttachments(library, caliberId)
  const sources = (await listSources(library)).map(({ values: _, ...source }) => source)
  if (caliberId !== undefined) {
    const named = JSON.stringify(calibers)
    const used = sources.filter(({ key }) => named.includes(JSON.stringify(key)))
    return writeLibraryFile({ lignebook: 1, sources: used, calibers, springs: [], movements: [], ...attachments })
  }
  const { others, movements } = await readKeptSections(library)
  const springs = (await allSprings(library)).map(({ id: _, ...spring }) => spring)
  const lines = (await listOrders(library)).map(({ id: _, ...line }) => line)
  const orders = lines.length === 0 ? {} : { orders: lines }
  const tables = (await listGauges(library)).map(({ id: _, ...table }) => table)
  const gauges = tables.length === 0 ? {} : { gauges: tables }
  return writeLibraryFile({
    ...{ lignebook: 1, sources, calibers, springs, movements },
    ...orders,
    ...gauges,
    ...attachments,
    ...others,
  })
}
