import { readFile } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'

const demoCalibers = 32

const giveCommand = async (page: Page, words: string) => {
  await page.locator('#main').focus()
  await page.keyboard.press('Control+k')
  await page.getByRole('combobox', { name: 'Find a command' }).fill(words)
  await page.keyboard.press('Enter')
}

const exported = async (page: Page): Promise<{ name: string; text: string }> => {
  const [download] = await Promise.all([page.waitForEvent('download'), giveCommand(page, 'Export the library')])
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') }
}

const importFile = async (page: Page, name: string, text: string) => {
  await page.locator('#main').focus()
  await page.keyboard.press('i')
  await page.locator('input[type=file]').setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) })
  return page.getByRole('region', { name: 'What would be done' })
}

inChromium('taking in and giving out', ({ open }) => {
  test('a library exported and imported into an empty one is the same library, and one step takes it back', async () => {
    const full = await open({ demo: true })
    await full.page.locator('#caliber-0').waitFor()
    const first = await exported(full.page)
    expect(first.name).toMatch(/\.json$/)

    const { page } = await open()
    const trial = await importFile(page, first.name, first.text)
    await trial.getByText(`${demoCalibers} calibers would be added.`).waitFor()
    await page.locator('.status-line', { hasText: '0 calibers' }).waitFor()
    await trial.getByRole('button', { name: `Import ${first.name}` }).press('Enter')
    await page.locator('.count', { hasText: `${demoCalibers} calibers` }).waitFor()
    const { exportedAt: _once, ...before } = JSON.parse(first.text)
    const { exportedAt: _again, ...after } = JSON.parse((await exported(page)).text)
    expect(after).toEqual(before)

    await page.locator('#caliber-list').focus()
    await page.keyboard.press('Control+z')
    await page.getByRole('heading', { name: 'This library is empty' }).waitFor()
  })

  test('a file that cannot be read is named with what is wrong, and nothing is stored', async () => {
    const { page } = await open({ demo: true })
    await page.locator('#caliber-0').waitFor()
    await importFile(page, 'broken.json', '{"calibers": [')
    expect(await page.getByRole('alert').textContent()).toMatch(/^broken\.json cannot be read/)
    expect(await page.getByRole('button', { name: /^Import broken/ }).count()).toBe(0)
    await page.locator('.status-line', { hasText: `${demoCalibers} calibers` }).waitFor()
  })

  test('Delete removes a caliber from its page, and undo brings it back', async () => {
    const { page } = await open({ demo: true })
    await page.getByRole('combobox').fill('8-310')
    await page.locator('[aria-selected="true"] .why').waitFor()
    await page.getByRole('combobox').press('Enter')
    await page.getByRole('heading', { level: 1, name: 'Verrin 8-310' }).waitFor()
    await page.keyboard.press('Delete')
    await page.getByText('Removed Verrin 8-310. Ctrl Z brings it back.').waitFor()
    await page.locator('.status-line', { hasText: `${demoCalibers - 1} calibers` }).waitFor()
    await page.getByText('Nothing in the library answers to “8-310”.').waitFor()
    await page.getByRole('button', { name: 'Show all calibers' }).press('Enter')
    await page.locator('#caliber-list').focus()
    await page.keyboard.press('Control+z')
    await page.locator('.count', { hasText: `${demoCalibers} calibers` }).waitFor()
  })
})
