import fc from 'fast-check'

/** Random exchange files, as another hand or a newer version may write them, with keys that this version does not know. */

const word = fc.stringMatching(/^[A-Za-z0-9'", .±-]{0,12}$/)
const newKey = fc.stringMatching(/^x[A-Z][a-z]{1,5}$/)
/** JSON has no negative nought. */
const json = (maxDepth: number) =>
  fc.json({ maxDepth }).map((text): unknown => JSON.parse(text.replace(/-0(?![\d.])/g, '0')))
const newKeys = fc.dictionary(newKey, json(2), { maxKeys: 2 })

const reading = fc
  .record({ printed: word, source: word, page: word, note: word, chosen: fc.boolean() }, { requiredKeys: ['printed'] })
  .chain((known) => newKeys.map((unknown) => ({ ...unknown, ...known })))
/** Of several readings one at most is chosen: the first that says so. */
const readings = fc.array(fc.oneof(word, reading), { maxLength: 3 }).map((all) => {
  const chosen = all.findIndex((one) => typeof one === 'object' && one.chosen === true)
  return all.map((one, at) =>
    typeof one === 'object' && at !== chosen && one.chosen ? { ...one, chosen: false } : one,
  )
})
const fieldValue = fc.oneof(
  fc.double({ min: 0, max: 1e6, noNaN: true }),
  word,
  reading,
  fc.array(word, { maxLength: 3 }),
  readings,
)
const fieldKey = fc.constantFrom('beatRateVph', 'springThicknessMm', 'alsoKnownAs', 'winding', 'notes')
const fields = fc
  .tuple(
    fc.dictionary(fieldKey, fieldValue, { maxKeys: 4 }),
    fc.dictionary(newKey, fc.oneof(fieldValue, json(2)), { maxKeys: 2 }),
  )
  .map(([known, unknown]) => ({ ...known, ...unknown }))
const lines = fc.array(fc.dictionary(fc.constantFrom('place', 'kind', 'count', 'part', 'xNew'), json(1)), {
  maxLength: 2,
})

const overrule = fc
  .record({
    proof: fc.constantFrom('jewels-add-up', 'sources-agree', 'some-later-proof'),
    severity: fc.constantFrom('accepted', 'doubtful', 'wrong'),
    reason: word.filter((reason) => reason.trim() !== ''),
    of: fc.constantFrom('agrees', 'disagrees', 'doubtful', 'cannot-check', 'outside-range'),
  })
  .chain((known) => newKeys.map((unknown) => ({ ...unknown, ...known })))

export const arbitraryFileCaliber = fc
  .record({
    maker: word,
    designation: word,
    fields,
    jewels: lines,
    lubrication: lines,
    depths: lines,
    parts: lines,
    stripOrder: lines,
  })
  .chain((lists) =>
    fc
      .option(fc.uniqueArray(overrule, { maxLength: 3, selector: ({ proof }) => proof }), { nil: undefined })
      .map((overrules) => (overrules === undefined ? lists : { ...lists, overrules })),
  )
  .chain((known) => newKeys.map((unknown) => ({ ...unknown, ...known })))

const hundredths = (low: number, high: number) => fc.integer({ min: low, max: high }).map((number) => number / 100)
const springs = fc.uniqueArray(
  fc
    .record(
      {
        supplierRef: fc.stringMatching(/^[A-Z]\d{1,3}$/),
        heightMm: hundredths(50, 400),
        thicknessMm: hundredths(4, 40),
        lengthMm: fc.integer({ min: 100, max: 900 }),
        barrelMm: hundredths(500, 2000),
        end: fc.constantFrom('tongue', 'hole', 'slipping-bridle'),
        inStock: fc.nat(20),
        tray: fc.constantFrom('Drawer 3', 'Sarelle Springs'),
        note: fc.constantFrom('blued', 'white'),
      },
      { requiredKeys: ['supplierRef', 'heightMm', 'thicknessMm'] },
    )
    .chain((known) => newKeys.map((unknown) => ({ ...unknown, ...known }))),
  { maxLength: 3, selector: ({ supplierRef, tray }) => `${tray} ${supplierRef}` },
)

export const arbitraryLibraryDocument = fc
  .record({
    lignebook: fc.constant(1),
    sources: fc.array(fc.record({ key: fc.stringMatching(/^[a-z]{1,4}$/), title: word }), { maxLength: 2 }),
    calibers: fc.array(arbitraryFileCaliber, { maxLength: 3 }),
    springs,
    movements: lines,
  })
  .chain((known) => newKeys.map((unknown) => ({ ...unknown, ...known })))
