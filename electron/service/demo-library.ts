import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { fileCaliberSchema, type LibraryFile, sourceSchema } from '../../core/exchange/library-file.ts'

const linesFile = z.array(z.record(z.string(), z.unknown()))
const sourcesFile = z.union([z.array(sourceSchema), z.object({ sources: z.array(sourceSchema) })])

/** Reads the demo library: one file a caliber, the shelf of sources that they name, the springs in the drawer, and a gauge on paper. */
export const readDemoLibrary = (folder: string): LibraryFile => {
  const json = (...path: string[]): unknown => JSON.parse(readFileSync(join(folder, ...path), 'utf8'))
  const shelf = sourcesFile.parse(json('sources.json'))
  const names = readdirSync(join(folder, 'calibers')).filter((name) => name.endsWith('.json'))
  return {
    lignebook: 1,
    sources: Array.isArray(shelf) ? shelf : shelf.sources,
    calibers: names.sort().map((name) => fileCaliberSchema.parse(json('calibers', name))),
    springs: linesFile.parse(json('springs.json')),
    gauges: linesFile.parse(json('gauges.json')),
    movements: [],
  }
}
