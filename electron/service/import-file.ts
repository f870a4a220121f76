import { isDeepStrictEqual } from 'node:util'
import type { ImportCounts } from '../../core/api/contract.ts'
import type { CaliberEntry } from '../../core/exchange/library-file.ts'
import { bringInAttachments } from '../store/attachment-exchange.ts'
import { findCaliber, readCaliber, type SavedItem, saveCalibers } from '../store/calibers.ts'
import { bringInGauges, foreseeGauges } from '../store/gauges.ts'
import { keepSections } from '../store/kept-sections.ts'
import type { Library } from '../store/library.ts'
import { bringInOrders, foreseeOrders } from '../store/orders.ts'
import { listSources } from '../store/sources.ts'
import { bringInSprings, foreseeSprings } from '../store/springs.ts'
import { recountVariants } from './families.ts'
import { decideAttachments } from './import-attachments.ts'
import { placeInCaliber, proveEntry, sayProblem } from './prove-entry.ts'
import type { Incoming, IncomingCaliber } from './read-import.ts'

/**
 * Brings calibers in: each whole or not at all, and together as one step that undo takes back.
 * A dry run decides everything and writes nothing.
 */
export const importFile = async (
  library: Library,
  incoming: Incoming,
  { action, dryRun }: { readonly action: string; readonly dryRun: boolean },
): Promise<ImportCounts> => {
  const refused = [...incoming.refused]
  const items: SavedItem[] = []
  const seen = new Set<string>()
  let unchanged = 0
  for (const caliber of incoming.calibers) {
    const { path, entry: said } = caliber
    const name = `${said.maker.trim()} ${said.designation.trim()}`
    const id = await findCaliber(library, said.maker, said.designation)
    const stored = id === null ? null : await readCaliber(library, id)
    const entry = stored !== null && caliber.partial ? withRest(stored, said) : said
    const { values, problems, disagree, doubtful } = proveEntry(entry)
    const [problem] = problems
    if (problem) refused.push({ path: placeOf(caliber, placeInCaliber(problem)), reason: sayProblem(problem) })
    else if (seen.has(id === null ? name.toLowerCase() : String(id)))
      refused.push({ path, reason: `${name} stands in the file twice; give one of the two another designation.` })
    else if (isDeepStrictEqual(stored, entry)) unchanged += 1
    else items.push({ id, entry, values, disagree, doubtful })
    seen.add(id === null ? name.toLowerCase() : String(id))
  }
  const pictures = decideAttachments(library, incoming.attachments, {
    calibers: items.map(({ entry }) => entry),
    sources: incoming.sources,
  })
  refused.push(...pictures.refused)
  const springs = foreseeSprings(library, incoming.springs)
  const orders = { ...foreseeOrders(library, incoming.orders), removed: 0 }
  const gauges = { ...foreseeGauges(library, incoming.gauges), removed: 0 }
  const stock = gauges.added + gauges.updated + springs.added + springs.updated + orders.added + orders.updated
  if (!dryRun) {
    const shelf = new Map((await listSources(library)).map(({ values: _, ...source }) => [source.key, source]))
    const fresh = incoming.sources.filter((source) => !isDeepStrictEqual(shelf.get(source.key), source))
    await saveCalibers(
      library,
      items,
      action,
      fresh,
      pictures.wanted.length + stock === 0
        ? undefined
        : (revision) => {
            bringInAttachments(library, revision, pictures.wanted)
            bringInSprings(library, revision, incoming.springs)
            bringInOrders(library, revision, incoming.orders, incoming.springs.length)
            const position = incoming.springs.length + incoming.orders.length
            bringInGauges(library, revision, incoming.gauges, position)
          },
    )
    if (items.length > 0) await recountVariants(library)
    await keepSections(library, incoming.sections)
  }
  return {
    added: items.filter(({ id }) => id === null).length,
    updated: items.filter(({ id }) => id !== null).length,
    unchanged,
    ...(incoming.attachments.length === 0 ? {} : { attachments: pictures.wanted.length }),
    ...(incoming.springs.length === 0 ? {} : { springs }),
    ...(incoming.orders.length === 0 ? {} : { orders }),
    ...(incoming.gauges.length === 0 ? {} : { gauges }),
    refused,
    kept: keptNames(incoming),
  }
}

const placeOf = ({ path, partial }: IncomingCaliber, place: string): string =>
  partial ? `${path}, ${place.replace(/^fields\./, '')}` : `${path}.${place}`

const keptNames = ({ sections: { movements, others } }: Incoming): string[] => [
  ...(movements.length > 0 ? ['movements'] : []),
  ...Object.keys(others),
]

/** What a table says of a caliber, over what the library has of it: a cell takes the place of the chosen reading. */
const withRest = (stored: CaliberEntry, said: CaliberEntry): CaliberEntry => {
  const fields = { ...stored.fields }
  for (const [key, readings] of Object.entries(said.fields)) {
    const before = fields[key] ?? []
    const chosen = before.find((reading) => reading.chosen === true)
    if (chosen?.printed === readings[0]?.printed) continue
    fields[key] = [...readings, ...before.filter((reading) => reading !== chosen)]
  }
  return { ...stored, fields }
}
