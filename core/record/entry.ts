import type { CaliberEntry, EntryReading, FileCaliber } from '../exchange/library-file.ts'
import { type CaliberFieldKey, caliberFields } from '../fields/caliber-fields.ts'
import { readNames, writeNames } from './read-field.ts'

type FileField = FileCaliber['fields'][string]
type FileReading = Exclude<FileField, readonly unknown[]> | readonly string[]

/** An entry in which nothing is filled in. */
export const blankEntry = (): CaliberEntry => ({
  maker: '',
  designation: '',
  fields: {},
  jewels: [],
  lubrication: [],
  depths: [],
  parts: [],
  stripOrder: [],
})

/** The keys of an entry that this version knows. */
export const entryKeys: ReadonlySet<string> = new Set([
  ...Object.keys(blankEntry()),
  'overrules' satisfies keyof CaliberEntry,
])

/** True for a field that this version knows. */
export const isCaliberField = (key: string): key is CaliberFieldKey => Object.hasOwn(caliberFields, key)

const isListOfNames = (key: string): boolean => isCaliberField(key) && caliberFields[key].kind === 'texts'

const openReading = (reading: FileReading): EntryReading => {
  if (typeof reading === 'number' || typeof reading === 'string') return { printed: String(reading) }
  if (Array.isArray(reading)) return { printed: writeNames(reading) }
  // Neither a number, nor a text, nor a list: the schema leaves only a reading with its printed text.
  const { source, page, note, chosen, ...rest } = reading as Extract<FileReading, { printed: string }>
  return {
    ...rest,
    ...(source !== undefined && { source }),
    ...(page !== undefined && { page }),
    ...(note !== undefined && { note }),
    ...(chosen !== undefined && { chosen }),
  }
}

/** Marks exactly one reading as chosen: the first that says so, or the first. */
export const chooseOne = (readings: readonly EntryReading[]): EntryReading[] => {
  const chosen = Math.max(
    0,
    readings.findIndex((reading) => reading.chosen === true),
  )
  return readings.map(({ chosen: _, ...reading }, index) =>
    index === chosen ? { ...reading, chosen: true } : reading,
  ) as EntryReading[]
}

const openField = (key: string, field: FileField): EntryReading[] => {
  if (!Array.isArray(field)) return chooseOne([openReading(field)])
  const items: readonly FileReading[] = field
  const names = items.filter((item) => typeof item === 'string')
  // `alsoKnownAs: ["a", "b"]` is one list of names; in any other field an array holds several readings.
  if (isListOfNames(key) && names.length === items.length)
    return names.length > 0 ? chooseOne([openReading(names)]) : []
  return chooseOne(items.map(openReading))
}

/** Opens a caliber from a file into an entry: every field a list of readings, exactly one of them chosen. */
export const openCaliber = ({ overrules = [], ...file }: FileCaliber): CaliberEntry => ({
  ...file,
  fields: Object.fromEntries(Object.entries(file.fields).map(([key, field]) => [key, openField(key, field)])),
  ...(overrules.length > 0 && { overrules }),
})

const closeReading = (key: string, reading: EntryReading): FileReading => {
  const { chosen: _, ...rest } = reading
  const asWritten = isCaliberField(key) || Object.keys(rest).length > 2 ? undefined : rest.asWritten
  // Any JSON value: only the newer version that wrote it knows of what form it is.
  if (asWritten !== undefined && JSON.stringify(asWritten) === rest.printed) return asWritten as FileReading
  if (Object.values(rest).filter((value) => value !== undefined).length > 1) return rest as FileReading
  const names = readNames(reading.printed)
  return isListOfNames(key) && names.length > 0 && writeNames(names) === reading.printed ? names : reading.printed
}

const closeField = (key: string, readings: readonly EntryReading[]): FileField => {
  const [only] = readings
  // Of several readings each is an object, so that the one chosen can say so.
  if (only && readings.length === 1) return closeReading(key, only) as FileField
  return chooseOne(readings) as FileField
}

/** Closes an entry for a file, as compactly as it can be said: a lone reading without a source is its printed text. */
export const closeEntry = (entry: CaliberEntry): FileCaliber => ({
  ...entry,
  fields: Object.fromEntries(
    Object.entries(entry.fields)
      .filter(([, readings]) => readings.length > 0)
      .map(([key, readings]) => [key, closeField(key, readings)]),
  ),
})
