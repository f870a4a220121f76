import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { proveCaliber } from '../../core/proofs/prove.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { proofsSheet } from '../../electron/service/proofs-sheet.ts'
import { pageOfCalibers, readCaliber, saveCaliber, saveCalibers } from '../../electron/store/calibers.ts'
import { checkLibraryFile } from '../../electron/store/check-library-file.ts'
import { type Library, openLibrary } from '../../electron/store/library.ts'
import { searchCalibers } from '../../electron/store/search.ts'
import { compact, folded, wordsOf } from '../../electron/store/search-keys.ts'
import { madeUpCalibers, seededNumbers } from '../support/made-up-calibers.ts'
import { measureImport } from './import-springs.ts'
import { type Figure, figure, machine, quantile, tableOf, timesOf } from './measure.ts'
import { measureMissing } from './missing-counts.ts'
import { measureRanking } from './rank-springs.ts'
import { startPage } from './start-page.ts'

const count = Number(process.argv[2] ?? 100_000)
const folder = mkdtempSync(join(tmpdir(), 'lignebook-bench-'))
const file = join(folder, 'library.sqlite')
const now = () => new Date().toISOString()
const figures: Figure[] = []
const add = (line: Figure): void => {
  figures.push(line)
}
const tell = (text: string): void => console.error(text)

const item = (entry: Parameters<typeof readEntry>[0]) => ({
  id: null,
  entry,
  values: readEntry(entry).caliber,
  disagree: 0,
  doubtful: 0,
})

/** Fills the library in large imports, so that each makes the word index once. */
const fill = async (library: Library): Promise<void> => {
  let batch: ReturnType<typeof item>[] = []
  const flush = async () => {
    await saveCalibers(library, batch, `import of made-up.json (${batch.length} calibers)`)
    batch = []
  }
  for (const entry of madeUpCalibers(count)) {
    batch.push(item(entry))
    if (batch.length === 25_000) await flush()
  }
  await flush()
}

/** What someone types, letter by letter up to eight, some with a slip, and sizes. */
const typedTexts = (): { kind: string; text: string }[] => {
  const next = seededNumbers(7)
  const entries = [...madeUpCalibers(count)].filter((_, at) => at % Math.ceil(count / 40) === 0)
  const letters = (kind: string, text: string) =>
    Array.from({ length: Math.min(8, text.length) }, (_, at) => ({ kind, text: text.slice(0, at + 1) }))
  const slip = (word: string) => {
    const at = 1 + Math.floor(next() * (word.length - 2))
    return word.slice(0, at) + (word[at + 1] ?? '') + (word[at] ?? '') + word.slice(at + 2)
  }
  return entries.flatMap(({ maker, designation, fields }) => [
    ...letters('maker', maker),
    ...letters('designation', designation),
    { kind: 'maker and designation', text: `${maker} ${designation.slice(0, 4)}` },
    ...letters('word of a note', fields.notes?.[0]?.printed.split(' ')[1] ?? 'repassage'),
    { kind: 'word with a slip', text: slip(maker.toLowerCase()) },
    { kind: 'size', text: fields.diameterMm?.[0]?.printed ?? "17'''" },
  ])
}

/** Plain SQLite on the same file: the b-tree and word look-ups for the same text, with the same rows fetched. */
const rawSearch = ({ connection }: Library): ((text: string) => void) => {
  const columns =
    'c.id, maker, designation, size_printed, diameter_mm, beat_rate_vph, first_year, last_year, disagree, doubtful'
  const range = (column: string) =>
    connection.prepare(
      `select ${columns} from caliber c where ${column} >= ? and ${column} < ? order by ${column} limit 50`,
    )
  const [designation, maker] = [range('designation_compact'), range('maker_folded')]
  const words = connection.prepare(
    `select ${columns} from search_words join caliber c on c.id = search_words.rowid where search_words match ? limit 50`,
  )
  return (text) => {
    designation.all(compact(text), `${compact(text)}\u{10ffff}`)
    maker.all(folded(text), `${folded(text)}\u{10ffff}`)
    words.all(
      wordsOf(text)
        .map((word) => `"${word}"*`)
        .join(' '),
    )
  }
}

const measureSearch = async (library: Library): Promise<void> => {
  const typed = typedTexts()
  const raw = rawSearch(library)
  for (const { text } of typed.slice(0, 200)) {
    await searchCalibers(library, text, 50)
    raw(text)
  }
  const measured = async (texts: readonly string[], what: string) => {
    const plain = await timesOf(texts, raw)
    const ours = await timesOf(texts, (text) => searchCalibers(library, text, 50))
    const bound = 2 * quantile(plain, 0.5)
    add(
      figure(
        `search: ${what}`,
        ours,
        `median ≤ 2 × raw (${bound.toFixed(3)}), p99 < 10`,
        (median, p99) => median <= bound && p99 < 10,
      ),
    )
    add(figure(`  raw SQLite: ${what}`, plain))
  }
  await measured(
    typed.map(({ text }) => text),
    'every keystroke',
  )
  for (const kind of new Set(typed.map((each) => each.kind))) {
    await measured(
      typed.filter((each) => each.kind === kind).map(({ text }) => text),
      kind,
    )
  }
}

const measureProving = (): void => {
  const calibers = [...madeUpCalibers(count)].map((entry) => readEntry(entry).caliber)
  for (const caliber of calibers.slice(0, 2000)) proveCaliber(caliber)
  let findings = 0
  let start = performance.now()
  for (const caliber of calibers) findings += proveCaliber(caliber).length
  add(
    figure(
      `proving ${count} calibers (${findings} findings)`,
      [performance.now() - start],
      '< 3000',
      (ms) => ms < 3000,
    ),
  )
  start = performance.now()
  for (const caliber of calibers) findings += Object.keys(caliber.values).length
  add(figure('  the same loop, reading the values and proving nothing', [performance.now() - start]))
}

/** The sheet of proofs as the page asks for it, stretch by stretch, beside reading the same entries. */
const measureSheet = async (library: Library): Promise<void> => {
  const proved = Math.min(count, 10_000)
  const limit = 100
  const stretches = Array.from({ length: Math.ceil(proved / limit) }, (_, at) => at * limit)
  let lines = 0
  const times = await timesOf(stretches, async (offset) => {
    lines += (await proofsSheet(library, { offset, limit, unchecked: false })).lines.length
  })
  const whole = times.reduce((sum, time) => sum + time, 0)
  add(figure(`sheet of proofs: ${proved} calibers (${lines} lines)`, [whole]))
  add(figure(`  a stretch of ${limit}`, times, 'median < 100', (ms) => ms < 100))
  const reading = await timesOf(stretches, async (offset) => {
    for (const { id } of await pageOfCalibers(library, { offset, limit })) await readCaliber(library, id)
  })
  add(figure(`  the same stretches, reading the entries and proving nothing`, reading))
}

try {
  tell(`Making up ${count} calibers…`)
  const start = performance.now()
  let library = await openLibrary(file, { create: true, now })
  await fill(library)
  add(figure(`import of ${count} calibers`, [performance.now() - start]))
  await library.close()
  tell(`The library takes ${Math.round(statSync(file).size / 2 ** 20)} MiB.`)

  const opening = await timesOf([1, 2, 3, 4, 5], async () => (await openLibrary(file, { create: false, now })).close())
  const checking = await timesOf([1, 2, 3, 4, 5], () => checkLibraryFile(file))
  add(figure('opening, with the check of every page, and closing', opening))
  add(figure('  the check alone', checking))

  library = await openLibrary(file, { create: false, now })
  await measureSearch(library)
  const offsets = Array.from({ length: 200 }, (_, at) => Math.floor((at / 200) * count))
  add(
    figure(
      'a page of 100 from the list',
      await timesOf(offsets, (offset) => pageOfCalibers(library, { offset, limit: 100 })),
      'p99 < 50',
      (_, p99) => p99 < 50,
    ),
  )
  const fresh = [...madeUpCalibers(300, 99)].map((entry) => item({ ...entry, maker: `Neu ${entry.maker}` }))
  add(
    figure(
      'saving one caliber',
      await timesOf(fresh, ({ entry, ...saving }) => saveCaliber(library, null, entry, { ...saving, action: 'entry' })),
      'p99 < 50',
      (_, p99) => p99 < 50,
    ),
  )
  await measureSheet(library)
  await library.close()
  measureProving()
  for (const line of await measureMissing()) add(line)
  for (const line of await measureRanking(tell)) add(line)
  for (const line of await measureImport(tell)) add(line)
  for (const line of await startPage(file, tell)) add(line)
} finally {
  rmSync(folder, { recursive: true, force: true })
}
console.log(`${machine()}\n\n${tableOf(figures)}`)
