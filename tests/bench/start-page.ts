import { existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { startLoopback } from '../../electron/loopback/host.ts'
import { readPageFiles } from '../../electron/page/page-files.ts'
import { openService } from '../../electron/service/open-service.ts'
import { type Figure, figure } from './measure.ts'

const browserFile = '/usr/bin/chromium'
const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url))

/** How soon the page shows its list, and what was typed is found; nothing where page or browser is missing. */
export const startPage = async (file: string, tell: (text: string) => void): Promise<Figure[]> => {
  const pageFolder = here('../../out/page')
  if (!existsSync(browserFile) || !existsSync(pageFolder)) {
    tell('The start of the page is not measured: Chromium or the built page (npm run build) is missing.')
    return []
  }
  const service = await openService({ file, create: false, demoFolder: here('../../seed-data') })
  const files = readPageFiles(pageFolder)
  const host = await startLoopback({
    files: () => files,
    dispatch: service.dispatch,
    now: Date.now,
    log: () => undefined,
  })
  const browser = await chromium.launch({ executablePath: browserFile, args: ['--no-sandbox'] })
  try {
    const starts: number[] = []
    const keystrokes: number[] = []
    for (let run = 0; run < 10; run += 1) {
      const page = await (await browser.newContext()).newPage()
      const start = performance.now()
      await page.goto(host.newAddress())
      await page.getByRole('listbox', { name: 'Calibers' }).getByRole('option').first().waitFor()
      starts.push(performance.now() - start)
      const box = page.getByRole('combobox', { name: /^Find a caliber/ })
      const typed = performance.now()
      await box.fill('ver')
      await page.getByRole('listbox', { name: 'Calibers found' }).getByRole('option').first().waitFor()
      keystrokes.push(performance.now() - typed)
      await page.context().close()
    }
    return [
      figure('page: from its address to the list', starts, 'median < 1000', (ms) => ms < 1000),
      figure('page: from typed letters to what they find', keystrokes, 'median < 100', (ms) => ms < 100),
    ]
  } finally {
    await browser.close()
    await host.close()
    await service.close()
  }
}
