import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { rankSprings } from '../../core/springs/rank-springs.ts'
import type { StockSpring } from '../../core/springs/stock-spring.ts'
import { startLoopback } from '../../electron/loopback/host.ts'
import { readPageFiles } from '../../electron/page/page-files.ts'
import { openService } from '../../electron/service/open-service.ts'
import { seededNumbers } from '../support/made-up-calibers.ts'
import { type Figure, figure, timesOf } from './measure.ts'

const count = 50_000
/** As many as the page describes at once. */
const described = 500
const browserFile = '/usr/bin/chromium'
const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

const caliber = {
  barrelInsideMm: 10.5,
  barrelArborMm: 3.4,
  barrelDepthMm: 1.6,
  springHeightMm: 1.5,
  springThicknessMm: 0.105,
  springLengthMm: 360,
  springEnd: 'tongue',
  barrelTeeth: 80,
  centrePinion: 10,
  goingHours: 36,
} as const

const ends = ['hole', 'tongue', 't-end', 'slipping-bridle'] as const

/** Made-up springs in the steps of stock, as a large supplier might list them. */
const madeUpSprings = (): StockSpring[] => {
  const next = seededNumbers(11)
  return Array.from({ length: count }, (_, at) => ({
    supplierRef: `N ${at}`,
    heightMm: Math.round((1 + next()) * 20) / 20,
    thicknessMm: Math.round((0.08 + next() * 0.06) * 200) / 200,
    lengthMm: 200 + Math.round(next() * 30) * 10,
    end: ends[Math.floor(next() * ends.length)] ?? 'hole',
    inStock: Math.floor(next() * 4),
  }))
}

const inChromium = async (springs: readonly StockSpring[], tell: (text: string) => void): Promise<Figure[]> => {
  const pageFolder = here('../../out/page')
  if (!existsSync(browserFile) || !existsSync(pageFolder)) {
    tell('The painting of a ranking is not measured: Chromium or the built page (npm run build) is missing.')
    return []
  }
  const folder = mkdtempSync(join(tmpdir(), 'lignebook-bench-'))
  const file = join(folder, 'library.sqlite')
  const service = await openService({ file, create: true, demoFolder: here('../../seed-data') })
  const fields = Object.fromEntries(Object.entries(caliber).map(([key, value]) => [key, [{ printed: String(value) }]]))
  const lists = { jewels: [], lubrication: [], depths: [], parts: [], stripOrder: [] }
  await service.dispatch('caliber.save', {
    caliberId: null,
    entry: { maker: 'Verrin', designation: '11-300', fields, ...lists },
  })
  await service.dispatch('springs.save-many', { tray: '', springs })
  const files = readPageFiles(pageFolder)
  const host = await startLoopback({ files: () => files, dispatch: service.dispatch, now: Date.now, log: () => {} })
  const browser = await chromium.launch({ executablePath: browserFile, args: ['--no-sandbox'] })
  try {
    const page = await browser.newPage()
    await page.goto(host.newAddress())
    await page.getByText('11-300').first().waitFor()
    await page.evaluate(() => {
      location.hash = '#/caliber/1/spring'
    })
    await page.locator('.tray-line').first().waitFor()
    // A choice ranks the whole tray anew; the time runs to the frame after the one that shows it.
    const times = await page.evaluate(async () => {
      const box = document.querySelector<HTMLInputElement>('.tray-tools label > input[type=checkbox]')
      const painted = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))
      const all: number[] = []
      for (let run = 0; run < 20; run += 1) {
        await painted()
        const start = performance.now()
        box?.click()
        await painted()
        all.push(performance.now() - start)
      }
      return all
    })
    return [figure(`page: ${count} springs ranked, to painted rows`, times, 'median < 50', (ms) => ms < 50)]
  } finally {
    await browser.close()
    await host.close()
    await service.close()
    rmSync(folder, { recursive: true, force: true })
  }
}

/** A tray of fifty thousand springs ranked for a caliber, beside a loop that only reads their sizes. */
export const measureRanking = async (tell: (text: string) => void): Promise<readonly Figure[]> => {
  const springs = madeUpSprings()
  const runs = Array.from({ length: 60 }, (_, at) => at)
  let sum = 0
  const ranking = await timesOf(runs, () => {
    sum += rankSprings(caliber, springs, described).ranked.length
  })
  const bare = await timesOf(runs, () => {
    for (const { heightMm, thicknessMm, lengthMm = 0 } of springs) sum += heightMm * thicknessMm * lengthMm
  })
  if (!(sum > 0)) throw new Error('nothing was ranked')
  return [
    figure(`${count} springs ranked for a caliber`, ranking, 'median < 16', (ms) => ms < 16),
    figure('  a bare loop over their sizes', bare),
    ...(await inChromium(springs, tell)),
  ]
}
