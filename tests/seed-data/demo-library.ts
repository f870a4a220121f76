import { readdirSync, readFileSync } from 'node:fs'
import { z } from 'zod'
import { type FileCaliber, fileCaliberSchema, type Source, sourceSchema } from '../../core/exchange/library-file.ts'

const seedData = new URL('../../seed-data/', import.meta.url)
const readSeed = (path: string): string => readFileSync(new URL(path, seedData), 'utf8')

/** The demo library as it stands in its files; `file` is each caliber's file name. */
export const demoSources: readonly Source[] = z.array(sourceSchema).parse(JSON.parse(readSeed('sources.json')))

export const demoCalibers: readonly { readonly file: string; readonly caliber: FileCaliber }[] = readdirSync(
  new URL('calibers/', seedData),
)
  .toSorted()
  .map((file) => ({ file, caliber: fileCaliberSchema.parse(JSON.parse(readSeed(`calibers/${file}`))) }))

/** What one field of a file prints, every reading of it, the chosen or only one first. */
export const printedReadings = (
  caliber: FileCaliber,
  key: string,
): readonly { readonly printed: string; readonly source?: string; readonly chosen?: boolean }[] => {
  const field = caliber.fields[key]
  if (field === undefined) return []
  const readings = Array.isArray(field) ? field : [field]
  return readings
    .map((reading) =>
      typeof reading === 'object' && 'printed' in reading
        ? {
            printed: String(reading.printed),
            ...(reading.source === undefined ? {} : { source: reading.source }),
            ...(reading.chosen === undefined ? {} : { chosen: reading.chosen }),
          }
        : { printed: String(reading) },
    )
    .toSorted((a, b) => Number(b.chosen ?? false) - Number(a.chosen ?? false))
}

/** One row of the table of misprints in scenario.md. */
export interface PlantedMisprint {
  readonly caliber: string
  readonly field: string
  readonly printed: string
  readonly right: string
  readonly proofs: readonly string[]
}

const bare = (cell: string): string => cell.replaceAll('`', '').trim()

export const plantedMisprints: readonly PlantedMisprint[] = readSeed('scenario.md')
  .split('\n')
  .filter((row) => row.startsWith('|') && row.includes('`'))
  .map((row) => {
    const [caliber = '', field = '', printed = '', right = '', , proofs = ''] = row.split('|').slice(1).map(bare)
    return { caliber, field, printed, right, proofs: proofs.split(', ') }
  })
