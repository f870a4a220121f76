import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BrowserContext, Page } from 'playwright-core'
import { openPage, serveLibrary, startChromium } from './support/lignebook-in-chromium.ts'

/** Makes the README's pictures from the real page and the demo library: `npm run pictures [FOLDER]`. */

const folder = process.argv[2] ?? join(import.meta.dirname, 'pictures')
mkdirSync(folder, { recursive: true })
const library = mkdtempSync(join(tmpdir(), 'lignebook-pictures-'))
const browser = await startChromium()
const host = await serveLibrary(join(library, 'library.sqlite'))

const picture = async (page: Page, name: string, fullPage = false) => {
  await page.evaluate(() => document.fonts.ready)
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage })
  console.log(join(folder, `${name}.png`))
}

const open = async (theme: 'light' | 'dark', width = 1280, height = 800): Promise<[BrowserContext, Page]> => {
  const context = await browser.newContext({ viewport: { width, height }, colorScheme: theme })
  const { page } = await openPage(context, host.newAddress())
  return [context, page]
}

const openCaliber = async (page: Page, words: string) => {
  await page.keyboard.press('/')
  await page.keyboard.type(words)
  await page.getByText(words, { exact: true }).first().waitFor()
  await page.waitForTimeout(300)
  await page.keyboard.press('Enter')
  await page.getByRole('heading', { level: 1 }).waitFor()
  await page.waitForTimeout(500)
}

{
  const [context, page] = await open('light')
  await page.getByRole('button', { name: /demo library/i }).click()
  await page.getByText('Verrin').first().waitFor()
  await openCaliber(page, '17-220')
  await picture(page, 'caliber-day')
  await context.close()
}
{
  const [context, page] = await open('light', 1280, 1000)
  await page.getByText('Verrin').first().waitFor()
  await openCaliber(page, '17-220')
  await page.keyboard.press('s')
  await page.locator('.spring-substitutes .tray-line').first().waitFor()
  await page.evaluate(() => document.getElementById('barrel-bench')?.scrollIntoView())
  await page.waitForTimeout(300)
  await picture(page, 'spring-day')
  await context.close()
}
{
  const [context, page] = await open('dark')
  await page.getByText('Verrin').first().waitFor()
  await page.keyboard.press('/')
  await page.keyboard.type('verin')
  await page.waitForTimeout(500)
  await picture(page, 'list-night')
  await context.close()
}
{
  const [context, page] = await open('light')
  await page.getByText('Verrin').first().waitFor()
  await openCaliber(page, '17-220')
  await page.keyboard.press('e')
  const third = page.locator('#cell-thirdWheel')
  await third.waitFor()
  await third.focus()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('57')
  await page.waitForTimeout(500)
  await picture(page, 'entry-day')
  await context.close()
}

await host.close()
await browser.close()
rmSync(library, { recursive: true, force: true })
