import { z } from 'zod'
import { caliberFields } from '../fields/caliber-fields.ts'
import { overrulesSchema } from '../proofs/severity.ts'

/**
 * The exchange file, as written and read. Objects are loose: a key that this version does not know
 * stays where it stood and is written out again.
 */

/** One reading of a field in the file: the text as printed, with its source. */
export const entryReadingSchema = z.looseObject({
  printed: z.string(),
  source: z.string().optional(),
  page: z.string().optional(),
  note: z.string().optional(),
  chosen: z.boolean().optional(),
  /** The whole value of a field that only a newer version knows, where it is no reading; printed shows it as JSON. */
  asWritten: z.unknown().optional(),
})
export type EntryReading = z.infer<typeof entryReadingSchema>

const pageNumber = z.union([z.string(), z.number().transform(String)])
const fileReadingSchema = z.union([
  z.number(),
  z.string(),
  z.array(z.string()),
  z.looseObject({
    printed: z.union([z.string(), z.number().transform(String)]),
    source: z.string().optional(),
    page: pageNumber.optional(),
    note: z.string().optional(),
    chosen: z.boolean().optional(),
  }),
])

const chosenOnce = (readings: readonly unknown[]): boolean =>
  readings.filter((reading) => entryReadingSchema.safeParse(reading).data?.chosen === true).length <= 1

/** Several readings of one field, of which one at most is chosen. */
const fileReadingsSchema = z.array(fileReadingSchema).refine(chosenOnce, 'chosen-twice')

const isReading = (value: unknown): boolean => typeof value === 'string' || entryReadingSchema.safeParse(value).success
const isReadings = (value: unknown): boolean =>
  Array.isArray(value) &&
  value.length > 0 &&
  value.every((item) => typeof item !== 'string' && isReading(item)) &&
  chosenOnce(value)

/** A field that this version does not know may hold anything: what is no reading is kept as it was written. */
const keepUnknownFields = (fields: unknown): unknown =>
  typeof fields !== 'object' || fields === null || Array.isArray(fields)
    ? fields
    : Object.fromEntries(
        Object.entries(fields).map(([key, value]: [string, unknown]) =>
          Object.hasOwn(caliberFields, key) || isReading(value) || isReadings(value)
            ? [key, value]
            : [key, { printed: JSON.stringify(value), asWritten: value }],
        ),
      )

const listLineSchema = z.record(z.string(), z.unknown())
const listsSchema = {
  jewels: z.array(listLineSchema).default([]),
  lubrication: z.array(listLineSchema).default([]),
  depths: z.array(listLineSchema).default([]),
  parts: z.array(listLineSchema).default([]),
  stripOrder: z.array(listLineSchema).default([]),
}

/** A caliber as it stands in a file: each field a number, a text, a reading, or several readings. */
export const fileCaliberSchema = z.looseObject({
  maker: z.string(),
  designation: z.string(),
  fields: z.preprocess(
    keepUnknownFields,
    z.record(z.string(), z.union([fileReadingSchema, fileReadingsSchema])).default({}),
  ),
  ...listsSchema,
  /** Findings on which the owner has the last word; absent where there are none. */
  overrules: overrulesSchema.optional(),
})
export type FileCaliber = z.infer<typeof fileCaliberSchema>

export const sourceSchema = z.looseObject({
  key: z.string().min(1),
  title: z.string(),
  author: z.string().optional(),
  year: z.number().int().optional(),
  edition: z.string().optional(),
  language: z.string().optional(),
  unitsAsPrinted: z.string().optional(),
  notes: z.string().optional(),
  /** The keys of the fields and lists that the source prints, in its own order. */
  columns: z.array(z.string()).optional(),
})
export type Source = z.infer<typeof sourceSchema>

const attachmentPlace = {
  page: z.string().optional(),
  position: z.number().int().optional(),
  note: z.string().optional(),
}

/** A picture or scan with its bytes in base64, and the calibers and sources at which it stands. */
export const fileAttachmentSchema = z.looseObject({
  sha256: z.string(),
  name: z.string(),
  type: z.string(),
  data: z.string(),
  uses: z
    .array(
      z.union([
        z.looseObject({ source: z.string(), ...attachmentPlace }),
        z.looseObject({ caliber: z.looseObject({ maker: z.string(), designation: z.string() }), ...attachmentPlace }),
      ]),
    )
    .default([]),
})
export type FileAttachment = z.infer<typeof fileAttachmentSchema>

export const libraryFileSchema = z.looseObject({
  lignebook: z.literal(1),
  sources: z.array(sourceSchema).default([]),
  calibers: z.array(fileCaliberSchema).default([]),
  springs: z.array(z.record(z.string(), z.unknown())).default([]),
  movements: z.array(z.record(z.string(), z.unknown())).default([]),
  /** The order list; absent where nothing is on it, and in files written before there was one. */
  orders: z.array(z.record(z.string(), z.unknown())).optional(),
  /** Tables of old gauges; absent where there are none, and in files written before there were any. */
  gauges: z.array(z.record(z.string(), z.unknown())).optional(),
  /** Absent where there are none, and in files written before there were any. */
  attachments: z.array(fileAttachmentSchema).optional(),
})
export type LibraryFile = z.infer<typeof libraryFileSchema>

/**
 * A caliber as it is typed, drafted, sent between page and library, and stored: the file's form with every
 * field opened to a list of readings as printed. `core/record/read-entry.ts` reads it into values.
 */
export const caliberEntrySchema = z.looseObject({
  maker: z.string(),
  designation: z.string(),
  fields: z.record(z.string(), z.array(entryReadingSchema)),
  jewels: z.array(listLineSchema),
  lubrication: z.array(listLineSchema),
  depths: z.array(listLineSchema),
  parts: z.array(listLineSchema),
  stripOrder: z.array(listLineSchema),
  overrules: overrulesSchema.optional(),
})
export type CaliberEntry = z.infer<typeof caliberEntrySchema>
