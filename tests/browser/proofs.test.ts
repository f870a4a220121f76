import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import Papa from 'papaparse'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf } from './support/keyboard.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const plainly = (text: string | null) => (text ?? '').replaceAll('\u202f', ' ').replace(/\s+/g, ' ').trim()

const openSheet = async (page: Page) => {
  await page.evaluate(() => {
    location.hash = '#/proofs'
  })
  await page.locator('.sheet-far', { hasText: 'calibers proved' }).waitFor()
  await page.locator('.sheet-line').first().waitFor()
}
const groups = async (page: Page) => (await page.locator('.sheet-group').allTextContents()).map(plainly)
const rate = (page: Page) => page.locator('.sheet-line', { hasText: 'vibrations an hour is stated' })
const pdfToText = (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, 'pdftotext')))

inChromium('the sheet of proofs', ({ open, newFile }) => {
  test('the whole library is proved, and each finding stands with its sentence, working and difference', async () => {
    const { page, host } = await open({ demo: true })
    await openSheet(page)
    const { calibers, disagreeing } = await createClient(host.dispatch)('library.status', {})
    expect(plainly(await page.locator('.sheet-far').textContent())).toBe(`${calibers} calibers proved`)
    expect(plainly(await page.locator('.sheet-summary [data-standing="wrong"]').textContent())).toBe(
      `${disagreeing} with something wrong`,
    )
    expect(plainly(await page.locator('.rail-item', { hasText: 'Proofs' }).textContent())).toBe(
      `Proofs${disagreeing} with proofs that disagree`,
    )
    expect((await groups(page))[0]).toMatch(/^Beat rate follows the train 1 wrong/)
    const line = rate(page)
    expect(plainly(await line.textContent())).toContain('wrongVerrin 8-310')
    expect(
      await line
        .locator('.working')
        .allTextContents()
        .then((all) => all.map(plainly)),
    ).toEqual(['80/10 × 57/10 × 80/8 × 2 × 15 = 13 680', '8 × 57/10 × 10 × 2 × 15 = 8 × 57 × 2 × 15 = 13 680'])
    expect(await line.getByRole('math').first().getAttribute('aria-label')).toMatch(
      /^80 over 10 times 57 over 10 times 80 over 8 times 2 times 15 equals 13.680$/,
    )
    expect(plainly(await line.locator('.sheet-difference').textContent())).toBe('−4320 vph')
  })

  test('it is grouped, filtered and narrowed, and what cannot be checked is shown when asked for', async () => {
    const { page } = await open({ demo: true })
    await openSheet(page)
    expect(await page.locator('.sheet-line[data-standing="cannot-check"]').count()).toBe(0)
    await page.getByRole('radio', { name: 'severity' }).check()
    await page.locator('.sheet-group', { hasText: /^Wrong \d+ findings$/ }).waitFor()
    expect(await page.evaluate(() => document.activeElement?.getAttribute('type'))).toBe('radio')
    await page.getByRole('radio', { name: 'caliber' }).check()
    await page.locator('.sheet-group', { hasText: 'Verrin 8-310' }).waitFor()

    const words = page.getByRole('textbox', { name: /^Find in the sheet/ })
    await words.fill('13-60 motion')
    await expect.poll(() => page.locator('.sheet-line').count()).toBe(1)
    await words.fill('zzqq')
    await page.getByText('answers to what is asked for').waitFor()
    await page.getByRole('button', { name: 'Show all that is wrong or doubtful' }).click()
    await page.locator('.sheet-line').nth(2).waitFor()

    await page.getByRole('combobox', { name: 'Maker' }).selectOption('Verrin')
    await expect.poll(async () => (await groups(page)).every((title) => title.startsWith('Verrin'))).toBe(true)
    await page.getByRole('combobox', { name: 'Maker' }).selectOption('')
    await page.getByRole('combobox', { name: 'Proof' }).selectOption('beat-rate-follows-train')
    await expect.poll(() => page.locator('.sheet-line').count()).toBe(1)
    await page.getByRole('checkbox', { name: /^cannot be checked/ }).check()
    await page.locator('.sheet-line[data-standing="cannot-check"]').first().waitFor()
    await page.getByRole('checkbox', { name: /^wrong/ }).uncheck()
    await expect.poll(() => page.locator('.sheet-line[data-standing="wrong"]').count()).toBe(0)
  })

  test('by keys alone one goes from a finding to the field and back to the same line, and what was put right is proved again', async () => {
    const { page } = await open({ demo: true })
    const keys = await keyboardOf(page)
    await page.locator('#caliber-list').focus()
    await keys.press('v')
    await page.locator('.sheet-line:focus').waitFor()
    await keys.press('ArrowDown')
    await keys.press('/')
    await keys.type('8-310 seconds')
    await expect.poll(() => page.locator('.sheet-line').count()).toBe(1)
    await keys.press('ArrowDown')
    await page.locator('.sheet-line:focus', { hasText: 'turns 45.6 times an hour' }).waitFor()
    await keys.press('Enter')
    await page.locator('#field-secondsDisplay:focus').waitFor()
    expect(
      await page.locator('#field-secondsDisplay').evaluate((field) => {
        const { top, bottom } = field.getBoundingClientRect()
        return top >= 0 && bottom <= innerHeight
      }),
    ).toBe(true)
    await keys.press('Escape')
    await page.locator('.sheet-line:focus', { hasText: 'turns 45.6 times an hour' }).waitFor()
    expect(await page.getByRole('textbox', { name: /^Find in the sheet/ }).inputValue()).toBe('8-310 seconds')

    await keys.press('Enter')
    await page.locator('#field-secondsDisplay:focus').waitFor()
    await keys.press('e')
    await page.locator('#cell-thirdWheel').focus()
    await keys.press('Control+a')
    await keys.type('75')
    await keys.press('Control+s')
    await page.locator('article.caliber').waitFor()
    await keys.press('Escape')
    await page.locator('.sheet-far', { hasText: 'calibers proved' }).waitFor()
    await page.getByText('answers to what is asked for').waitFor()
    expect(await keys.mouse()).toBeNull()
  })

  test('the sheet is saved as CSV with what is shown', async () => {
    const { page } = await open({ demo: true })
    await openSheet(page)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('lignebook proofs.csv')
    const text = readFileSync(await download.path(), 'utf8')
    const [headings = [], ...rows] = Papa.parse<string[]>(text.slice(1), { skipEmptyLines: true }).data
    expect(headings.join()).toBe(
      'maker,designation,proof,outcome,severity,stated,found,unit,difference,allowed,message,working,source',
    )
    const found = rows.find((row) => row[2] === 'beat-rate-follows-train')
    expect(found?.slice(0, 9)).toEqual([
      'Verrin',
      '8-310',
      'beat-rate-follows-train',
      'disagrees',
      'wrong',
      '18000',
      '13680',
      'vph',
      '-4320',
    ])
    await page.getByText(`Saved ${rows.length} findings as lignebook proofs.csv.`).waitFor()
  })

  test('axe finds nothing serious, and nothing reaches past a page of 400 px or text of 200 %', async () => {
    const { page } = await open({ demo: true, viewport: { width: 400, height: 800 } })
    await openSheet(page)
    const over = () =>
      page.evaluate(() => {
        const main = document.getElementById('main')
        return main === null ? 1 : Math.max(0, main.scrollWidth - main.clientWidth)
      })
    for (const theme of ['day', 'night']) {
      await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme)
      expect(await seriousFindings(page), theme).toEqual([])
    }
    expect(await over()).toBe(0)
    await page.setViewportSize({ width: 1280, height: 800 })
    await page.keyboard.press('Control++')
    for (const by of ['caliber', 'severity']) {
      await page.getByRole('radio', { name: by }).check()
      expect(await seriousFindings(page), by).toEqual([])
    }
    await page.evaluate(() => localStorage.setItem('lignebook.text-size', '2'))
    await page.reload()
    await openSheet(page)
    expect(await over()).toBe(0)
  })

  test.skipIf(!pdfToText)('the whole sheet is printed with its working, and nothing else', async () => {
    const { page } = await open({ demo: true, colorScheme: 'dark', viewport: { width: 1000, height: 300 } })
    await openSheet(page)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ])
    const [, ...rows] = Papa.parse<string[]>(readFileSync(await download.path(), 'utf8'), { skipEmptyLines: true }).data
    const file = `${newFile()}.pdf`
    await page.pdf({ path: file, preferCSSPageSize: true })
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).replace(/[^\S\n]+/gu, ' ')
    expect(await page.locator('.sheet-line').count()).toBeLessThan(rows.length)
    expect(text.match(/^ ?(?:wrong|doubtful) /gmu)?.length).toBe(rows.length)
    for (const [, designation] of rows) expect(text).toContain(designation)
    expect(text).toContain('= 8 × 57 × 2 × 15 = 13 680')
    expect(text).not.toContain('Save as CSV')
    expect(text).not.toContain('Group by')
  })
})
