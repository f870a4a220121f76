import { z } from 'zod'
import { caliberEntrySchema, sourceSchema } from '../exchange/library-file.ts'
import { orderLineSchema, orderStates } from '../orders/order-line.ts'
import type { Outcome } from '../proofs/proof.ts'
import type { Severity } from '../proofs/severity.ts'
import { standings } from '../proofs/standing.ts'
import { attachmentTypes } from '../record/attachment-kind.ts'
import { nearReasons } from '../record/near-names.ts'
import { gaugeTableSchema, gaugeTableShape } from '../springs/gauge-table.ts'
import { stockSpringSchema } from '../springs/stock-spring.ts'

/**
 * Every call that a page or a terminal may make, one row each: whether it reads or writes, what goes in, what comes out.
 * Nothing but JSON crosses. Handlers, client and hosts are typed from this table.
 */

const nothing = z.strictObject({})
const caliberId = z.int().positive()

/** A caliber in the list. Figures are canonical units, null where not stated. */
const caliberRowSchema = z.strictObject({
  id: caliberId,
  maker: z.string(),
  designation: z.string(),
  /** Size as printed: `17'''`. */
  sizePrinted: z.string().nullable(),
  diameterMm: z.number().nullable(),
  beatRateVph: z.number().nullable(),
  firstYear: z.number().nullable(),
  lastYear: z.number().nullable(),
  /** How many proofs disagree and how many are doubtful. */
  disagree: z.int(),
  doubtful: z.int(),
})
export type CaliberRow = z.infer<typeof caliberRowSchema>

/** Why a search found a caliber; `core/wording/search-reason.ts` says it. */
export const searchReasonSchema = z.strictObject({
  code: z.enum(['designation', 'maker', 'alias', 'size', 'words', 'spelling', 'maker-and-designation']),
  /** The stored words that matched. */
  matched: z.string(),
})
export type SearchReason = z.infer<typeof searchReasonSchema>

/** What bringing in many does, or would do. */
const stockCountsSchema = z.strictObject({ added: z.int(), updated: z.int(), unchanged: z.int(), removed: z.int() })
export type StockCounts = z.infer<typeof stockCountsSchema>

const importCountsSchema = z.strictObject({
  added: z.int(),
  updated: z.int(),
  unchanged: z.int(),
  /** Pictures and scans brought in; absent where the file has none. */
  attachments: z.int().optional(),
  /** Springs, lines of the order list, and gauge tables; absent where the file has none. */
  springs: stockCountsSchema.optional(),
  orders: stockCountsSchema.optional(),
  gauges: stockCountsSchema.optional(),
  refused: z.array(z.strictObject({ path: z.string(), reason: z.string() })),
  /** Parts of the file that this version keeps but has no page for. */
  kept: z.array(z.string()),
})
export type ImportCounts = z.infer<typeof importCountsSchema>

const draftSchema = z.strictObject({
  /** The caliber being changed; null for a new one. */
  caliberId: caliberId.nullable(),
  entry: caliberEntrySchema,
})
export type Draft = z.infer<typeof draftSchema>
const whoseDraft = draftSchema.pick({ caliberId: true })

const revisionSchema = z.strictObject({
  id: z.int(),
  /** ISO 8601, UTC. */
  at: z.string(),
  /** What was done, as a phrase: `change of Verrin 17-220`. */
  action: z.string(),
  takenBack: z.boolean(),
})
const revisionId = z.int().positive()

/** What a change did to one caliber, source, spring, line to order or gauge table; null where there was none before, or is none after. */
const changeSchema = z.union([
  z.strictObject({ caliberId, before: caliberEntrySchema.nullable(), after: caliberEntrySchema.nullable() }),
  z.strictObject({ sourceKey: z.string(), before: sourceSchema.nullable(), after: sourceSchema.nullable() }),
  z.strictObject({ springId: z.int(), before: stockSpringSchema.nullable(), after: stockSpringSchema.nullable() }),
  z.strictObject({ orderId: z.int(), before: orderLineSchema.nullable(), after: orderLineSchema.nullable() }),
  z.strictObject({ gaugeId: z.int(), before: gaugeTableShape.nullable(), after: gaugeTableShape.nullable() }),
])
export type RevisionChange = z.infer<typeof changeSchema>

/** Where a picture or scan stands. The page is the printed one; of a PDF, that of its first page. */
const attachmentPlaceSchema = z.union([
  z.strictObject({ caliberId, page: z.string().max(40).optional() }),
  z.strictObject({ source: z.string(), page: z.string().max(40).optional() }),
])

const attachmentTypeSchema = z.enum(attachmentTypes)
const attachmentLineSchema = z.strictObject({
  id: z.int(),
  sha256: z.string(),
  name: z.string(),
  type: attachmentTypeSchema,
  /** In bytes. */
  size: z.int(),
  caliberId: caliberId.nullable(),
  source: z.string().nullable(),
  page: z.string().nullable(),
  position: z.int(),
  note: z.string().nullable(),
})

const outcomes = [
  'agrees',
  'disagrees',
  'doubtful',
  'cannot-check',
  'outside-range',
] as const satisfies readonly Outcome[]
const severities = ['wrong', 'doubtful', 'accepted', 'none'] as const satisfies readonly Severity[]
const figureOrNone = z.number().nullable()

/** A finding on the sheet of proofs. */
const proofLineSchema = z.strictObject({
  caliberId,
  maker: z.string(),
  designation: z.string(),
  proof: z.string(),
  outcome: z.enum(outcomes),
  severity: z.enum(severities),
  stated: figureOrNone,
  found: figureOrNone,
  unit: z.string().nullable(),
  difference: figureOrNone,
  allowed: figureOrNone,
  message: z.string(),
  /** What the owner made of the finding and why, in a sentence. */
  overruled: z.string().nullable(),
  working: z.array(
    z.strictObject({
      formula: z.string(),
      gives: z.union([z.number(), z.string()]),
      unit: z.string().exactOptional(),
    }),
  ),
  /** Key of the field or list to look at first. */
  field: z.string().nullable(),
})
export type ProofLine = z.infer<typeof proofLineSchema>

export const contract = {
  'library.status': {
    access: 'read',
    input: nothing,
    output: z.strictObject({
      file: z.string(),
      calibers: z.int(),
      disagreeing: z.int(),
      draft: draftSchema.pick({ caliberId: true }).nullable(),
      undo: z.string().nullable(),
      redo: z.string().nullable(),
      lastBackup: z.string().nullable(),
    }),
  },
  'library.load-demo': { access: 'write', input: nothing, output: importCountsSchema },
  'library.back-up': {
    access: 'write',
    input: nothing,
    output: z.strictObject({ file: z.string(), calibers: z.int(), sha256: z.string() }),
  },
  'calibers.page': {
    access: 'read',
    input: z.strictObject({ offset: z.int().min(0), limit: z.int().min(1).max(500) }),
    output: z.strictObject({ total: z.int(), rows: z.array(caliberRowSchema) }),
  },
  /** Proves a stretch of the list: what weighs is answered in full, what agrees is only counted. */
  'proofs.sheet': {
    access: 'read',
    input: z.strictObject({
      offset: z.int().min(0),
      limit: z.int().min(1).max(500),
      /** Whether what cannot be checked is answered in full too. */
      unchecked: z.boolean().default(false),
    }),
    output: z.strictObject({
      /** How many calibers the library has. */
      total: z.int(),
      /** How many of the stretch stand how, each by its gravest finding. */
      calibers: z.strictObject({ wrong: z.int(), doubtful: z.int(), sound: z.int(), unproved: z.int() }),
      /** How many findings of each proof stand how, in the stretch. */
      counts: z.array(z.strictObject({ proof: z.string(), standing: z.enum(standings), count: z.int() })),
      lines: z.array(proofLineSchema),
    }),
  },
  'calibers.search': {
    access: 'read',
    input: z.strictObject({ words: z.string().max(200), limit: z.int().min(1).max(200).default(50) }),
    output: z.strictObject({ hits: z.array(caliberRowSchema.extend({ why: searchReasonSchema })) }),
  },
  /** Calibers that may be the one being typed, spelt otherwise. */
  'calibers.near': {
    access: 'read',
    input: z.strictObject({
      maker: z.string().max(200),
      designation: z.string().max(200),
      alsoKnownAs: z.array(z.string().max(200)).max(50).default([]),
      /** The caliber that is being changed. */
      except: caliberId.nullable().default(null),
      limit: z.int().min(1).max(50).default(5),
    }),
    output: z.strictObject({ near: z.array(caliberRowSchema.extend({ why: z.enum(nearReasons) })) }),
  },
  'caliber.read': {
    access: 'read',
    input: z.strictObject({ id: caliberId }),
    output: z.strictObject({ id: caliberId, entry: caliberEntrySchema }),
  },
  'caliber.bases': {
    access: 'read',
    input: z.strictObject({ caliberId: caliberId.nullable(), maker: z.string(), basedOn: z.string() }),
    /** The caliber on which one is based and that one's own base, as far as they are in the library; the nearest first. */
    output: z.strictObject({ bases: z.array(caliberEntrySchema), ids: z.array(caliberId) }),
  },
  /** The calibers based on one, directly or through others; `between` are the bases from each up to the one asked for. */
  'caliber.variants': {
    access: 'read',
    input: z.strictObject({ id: caliberId }),
    output: z.strictObject({
      variants: z.array(
        z.strictObject({ id: caliberId, entry: caliberEntrySchema, between: z.array(caliberEntrySchema) }),
      ),
    }),
  },
  'caliber.save': { access: 'write', input: draftSchema, output: z.strictObject({ id: caliberId }) },
  /** The rows of a table as one step. A row with an id is laid over what the library has of that caliber. */
  'calibers.save-many': {
    access: 'write',
    input: z.strictObject({
      items: z.array(draftSchema).max(10_000),
      /** What is done, as a phrase: `paste of 35 calibers`. */
      action: z.string().min(1).max(200),
      dryRun: z.boolean().default(false),
    }),
    output: z.strictObject({
      /** Where each row went; empty after a dry run. */
      ids: z.array(caliberId),
      /** Of a dry run, for each row: the caliber that has its name already, and the earlier row of the same name. */
      names: z.array(z.strictObject({ standing: caliberId.nullable(), twin: z.int().nullable() })),
    }),
  },
  /** Two records of one caliber become one: all that `from` says comes to `keep`, and `from` goes. */
  'caliber.merge': {
    access: 'write',
    input: z
      .strictObject({ keep: caliberId, from: caliberId })
      .refine(({ keep, from }) => keep !== from, 'a caliber cannot be merged into itself'),
    output: nothing,
  },
  'caliber.remove': { access: 'write', input: z.strictObject({ id: caliberId }), output: nothing },
  'draft.read': { access: 'read', input: whoseDraft, output: z.strictObject({ draft: draftSchema.nullable() }) },
  'draft.keep': { access: 'write', input: draftSchema, output: nothing },
  'draft.discard': { access: 'write', input: whoseDraft, output: nothing },
  'sources.list': {
    access: 'read',
    input: nothing,
    output: z.strictObject({ sources: z.array(sourceSchema.extend({ values: z.int() })) }),
  },
  'source.save': { access: 'write', input: z.strictObject({ source: sourceSchema }), output: nothing },
  'source.uses': {
    access: 'read',
    input: z.strictObject({ key: z.string(), limit: z.int().min(1).max(500).default(100) }),
    output: z.strictObject({
      /** How many calibers rest on the source. */
      total: z.int(),
      uses: z.array(
        z.strictObject({
          caliberId,
          maker: z.string(),
          designation: z.string(),
          /** The fields and lists of the caliber that name the source. */
          keys: z.array(z.string()),
        }),
      ),
      /** The gauge tables taken from it; absent where there are none. */
      gauges: z.array(z.string()).optional(),
    }),
  },
  'source.remove': { access: 'write', input: z.strictObject({ key: z.string() }), output: nothing },
  /** The whole tray and every list: the page ranks, searches and sorts them itself. */
  'springs.all': {
    access: 'read',
    input: nothing,
    output: z.strictObject({ springs: z.array(stockSpringSchema.extend({ id: z.int() })) }),
  },
  'spring.save': {
    access: 'write',
    input: z.strictObject({ id: z.int().positive().nullable(), spring: stockSpringSchema }),
    output: z.strictObject({ id: z.int() }),
  },
  'spring.remove': { access: 'write', input: z.strictObject({ id: z.int().positive() }), output: nothing },
  'spring.book-out': {
    access: 'write',
    input: z.strictObject({
      id: z.int().positive(),
      count: z.int().min(1).max(9999),
      /** For what, as a phrase: `Verrin 17-220, serial 4411`. */
      reason: z.string().max(200).default(''),
    }),
    output: z.strictObject({ left: z.int() }),
  },
  /** A list of springs as one step; with `replace`, its tray then holds these and no others. */
  'springs.save-many': {
    access: 'write',
    input: z.strictObject({
      tray: z.string().max(200),
      springs: z.array(stockSpringSchema).max(100_000),
      replace: z.boolean().default(false),
      dryRun: z.boolean().default(false),
    }),
    output: stockCountsSchema,
  },
  'orders.list': {
    access: 'read',
    input: nothing,
    output: z.strictObject({ orders: z.array(orderLineSchema.extend({ id: z.int() })) }),
  },
  /** The moment is set when the line is put on the list. */
  'order.save': {
    access: 'write',
    input: z.strictObject({
      id: z.int().positive().nullable(),
      line: orderLineSchema.extend({ at: orderLineSchema.shape.at.optional() }),
    }),
    output: z.strictObject({ id: z.int() }),
  },
  'order.remove': { access: 'write', input: z.strictObject({ id: z.int().positive() }), output: nothing },
  /** What was received goes into the owner's own tray. */
  'order.book-in': {
    access: 'write',
    input: z.strictObject({ id: z.int().positive() }),
    output: z.strictObject({ ref: z.string(), inStock: z.int() }),
  },
  'orders.mark': {
    access: 'write',
    input: z.strictObject({ ids: z.array(z.int().positive()).min(1).max(10_000), state: z.enum(orderStates) }),
    output: nothing,
  },
  /** The tables of old gauges that their owner entered. */
  'gauges.list': {
    access: 'read',
    input: nothing,
    output: z.strictObject({ gauges: z.array(gaugeTableShape.extend({ id: z.int() })) }),
  },
  'gauge.save': {
    access: 'write',
    input: z.strictObject({ id: z.int().positive().nullable(), table: gaugeTableSchema }),
    output: z.strictObject({ id: z.int() }),
  },
  'gauge.remove': { access: 'write', input: z.strictObject({ id: z.int().positive() }), output: nothing },
  'attachments.list': {
    access: 'read',
    input: z.strictObject({ caliberId: caliberId.optional(), source: z.string().optional() }),
    output: z.strictObject({ attachments: z.array(attachmentLineSchema) }),
  },
  'attachment.add': {
    access: 'write',
    /** The bytes in base64. */
    input: z.strictObject({ name: z.string().max(1000), data: z.string(), place: attachmentPlaceSchema }),
    output: z.strictObject({ useId: z.int(), sha256: z.string(), kept: z.enum(['now', 'before']) }),
  },
  'attachment.read': {
    access: 'read',
    input: z.strictObject({ sha256: z.string().max(64) }),
    output: z.strictObject({ type: attachmentTypeSchema, name: z.string(), data: z.string() }),
  },
  'attachment.remove': { access: 'write', input: z.strictObject({ useId: z.int() }), output: nothing },
  'history.undo': { access: 'write', input: nothing, output: z.strictObject({ undone: z.string().nullable() }) },
  'history.redo': { access: 'write', input: nothing, output: z.strictObject({ redone: z.string().nullable() }) },
  'history.list': {
    access: 'read',
    input: z.strictObject({
      limit: z.int().min(1).max(500).default(100),
      /** Only those older than this one. */
      before: revisionId.optional(),
    }),
    output: z.strictObject({ revisions: z.array(revisionSchema) }),
  },
  'history.read': {
    access: 'read',
    input: z.strictObject({
      id: revisionId,
      offset: z.int().min(0).default(0),
      limit: z.int().min(1).max(200).default(50),
    }),
    output: revisionSchema.extend({
      /** How many records were changed; `changes` is the stretch asked for. */
      total: z.int(),
      changes: z.array(changeSchema),
      /** What came later and touched the same, latest first: it stands in the way of taking this one back. */
      later: z.array(revisionSchema),
    }),
  },
  'history.take-back': {
    access: 'write',
    input: z.strictObject({ id: revisionId }),
    /** The new step, as a phrase. */
    output: z.strictObject({ done: z.string() }),
  },
  'exchange.import': {
    access: 'write',
    input: z.strictObject({ name: z.string(), text: z.string(), dryRun: z.boolean().default(false) }),
    output: importCountsSchema,
  },
  'exchange.export': {
    access: 'read',
    input: z.strictObject({ caliberId: caliberId.optional() }),
    output: z.strictObject({ text: z.string() }),
  },
} as const satisfies Record<string, { access: 'read' | 'write'; input: z.ZodType; output: z.ZodType }>

export type CallName = keyof typeof contract
export type CallInput<N extends CallName> = z.input<(typeof contract)[N]['input']>
export type ParsedInput<N extends CallName> = z.output<(typeof contract)[N]['input']>
export type CallOutput<N extends CallName> = z.output<(typeof contract)[N]['output']>

/** What stands behind the contract: one function a call. */
export type Handlers = { readonly [N in CallName]: (input: ParsedInput<N>) => CallOutput<N> | Promise<CallOutput<N>> }
