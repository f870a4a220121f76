import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium, type Page } from 'playwright-core'
import { guessSpringColumns } from '../../core/exchange/guess-spring-columns.ts'
import { readSpringTable } from '../../core/exchange/read-spring-table.ts'
import { startLoopback } from '../../electron/loopback/host.ts'
import { readPageFiles } from '../../electron/page/page-files.ts'
import { openService } from '../../electron/service/open-service.ts'
import { seededNumbers } from '../support/made-up-calibers.ts'
import { type Figure, figure, timesOf } from './measure.ts'

const count = 50_000
const browserFile = '/usr/bin/chromium'
const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

const headings = ['Réf.', 'Haut. (mm)', 'Ép. 1/100', 'Long. mm', 'Ø barillet', 'Accroch.', 'Mat.', 'Qté', 'Prix CHF']
const ends = ['trou', 'crochet', 'bride glissante', 'bout en T']
const materials = ['acier', 'inox', 'acier bleui', '']

/** A large supplier's list in French, as its rows of cells: decimal commas, hundredths, a bad row in each hundred. */
const madeUpList = (): string[][] => {
  const next = seededNumbers(17)
  const one = (of: readonly string[]): string => of[Math.floor(next() * of.length)] ?? ''
  const comma = (value: number, decimals: number): string => value.toFixed(decimals).replace('.', ',')
  const rows = Array.from({ length: count }, (_, at) => [
    `SR ${at}`,
    at % 100 === 99 ? 'deux' : comma(1 + next() * 2, 2),
    comma(7 + next() * 8, 1),
    String(200 + Math.floor(next() * 40) * 10),
    comma(7 + next() * 9, 1),
    one(ends),
    one(materials),
    String(Math.floor(next() * 9)),
    comma(3 + next() * 9, 2),
  ])
  return [headings, ...rows]
}

/** How long a step takes, and the longest time in it for which the page heard no key. */
const step = async (page: Page, run: () => Promise<unknown>): Promise<{ took: number; longest: number }> => {
  await page.evaluate(() => {
    const blocks: number[] = []
    Object.assign(window, { blocks })
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) blocks.push(duration)
    }).observe({ type: 'longtask' })
  })
  const start = performance.now()
  await run()
  const took = performance.now() - start
  // The observer is told of a block after it is over.
  await page.waitForTimeout(200)
  const longest = await page.evaluate(() => Math.max(0, ...(window as unknown as { blocks: number[] }).blocks))
  return { took, longest }
}

const inChromium = async (list: readonly (readonly string[])[], tell: (text: string) => void): Promise<Figure[]> => {
  const pageFolder = here('../../out/page')
  if (!existsSync(browserFile) || !existsSync(pageFolder)) {
    tell('The import through the page is not measured: Chromium or the built page (npm run build) is missing.')
    return []
  }
  const folder = mkdtempSync(join(tmpdir(), 'lignebook-bench-'))
  const csv = join(folder, 'Sarelle.csv')
  writeFileSync(csv, list.map((row) => row.join(';')).join('\r\n'))
  const file = join(folder, 'library.sqlite')
  const service = await openService({ file, create: true, demoFolder: here('../../seed-data') })
  const files = readPageFiles(pageFolder)
  const host = await startLoopback({ files: () => files, dispatch: service.dispatch, now: Date.now, log: () => {} })
  const browser = await chromium.launch({ executablePath: browserFile, args: ['--no-sandbox'] })
  try {
    const page = await browser.newPage()
    page.setDefaultTimeout(120_000)
    await page.goto(host.newAddress())
    await page.evaluate(() => {
      location.hash = '#/springs/import'
    })
    const opened = await step(page, async () => {
      await page.locator('input[type=file]').setInputFiles(csv)
      await page.locator('.list-counts').waitFor()
    })
    const named = await step(page, async () => {
      await page.getByLabel('Tray or list').pressSequentially(' winter', { delay: 60 })
      await page.locator('.list-counts').waitFor()
    })
    const brought = await step(page, async () => {
      await page.keyboard.press('Control+Enter')
      await page.locator('.spring-row').first().waitFor()
    })
    const sought = await step(page, async () => {
      await page.keyboard.press('/')
      await page.keyboard.type('1,50x0,105', { delay: 60 })
      await page.getByText(/ of .* springs found/).waitFor()
    })
    // In the field itself, Ctrl Z takes back what was typed.
    await page.keyboard.press('ArrowDown')
    await page.locator('.spring-row:focus').waitFor()
    const undone = await step(page, async () => {
      await page.keyboard.press('Control+z')
      await page.getByText('No spring is in the library yet.').waitFor()
    })
    const below100 = (ms: number): boolean => ms < 100
    return [
      figure(`page: list of ${count} springs read and compared with the tray`, [opened.took]),
      figure('  longest block of the page meanwhile', [opened.longest]),
      figure('  longest block while its tray is named', [named.longest], '< 100', below100),
      figure('page: brought in as one step, to painted rows', [brought.took]),
      figure('  longest block of the page meanwhile', [brought.longest]),
      figure('  longest block while sizes are typed to find', [sought.longest], '< 100', below100),
      figure('page: all of it taken back, to an empty tray', [undone.took]),
    ]
  } finally {
    await browser.close()
    await host.close()
    await service.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** A supplier's list of fifty thousand rows read and brought in, beside a loop that only looks at its cells. */
export const measureImport = async (tell: (text: string) => void): Promise<readonly Figure[]> => {
  const list = madeUpList()
  const runs = Array.from({ length: 5 }, (_, at) => at)
  const reading = { ...guessSpringColumns(list), order: 'height-thickness-length-barrel', words: {} } as const
  let read = 0
  const reads = await timesOf(runs, () => {
    read = readSpringTable(list, reading).springs.length
  })
  if (read !== count - count / 100) throw new Error(`${read} springs were read of ${count} rows`)
  let letters = 0
  const bare = await timesOf(runs, () => {
    for (const row of list) for (const cell of row) letters += cell.trim().length
  })
  if (!(letters > 0)) throw new Error('nothing was looked at')
  return [
    figure(`a list of ${count} springs read`, reads),
    figure('  a bare loop over its cells', bare),
    ...(await inChromium(list, tell)),
  ]
}
