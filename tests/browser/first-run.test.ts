import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf, tabTo } from './support/keyboard.ts'

const demoCalibers = 32

/** Thin and unbroken spaces as plain ones. */
const plainly = (text: string | null): string => (text ?? '').replace(/\s/gu, ' ')

const hit = (page: Page, name: string) => page.getByRole('option').filter({ hasText: name }).first()

/** Types what one remembers in the search field and waits for the first hit. */
const search = async (page: Page, words: string, name: string): Promise<string> => {
  await page.getByRole('combobox').fill(words)
  await page.locator('.count', { hasText: 'found' }).waitFor()
  const found = hit(page, name)
  await found.locator('.why').waitFor()
  return (await found.locator('.why').textContent()) ?? ''
}

const openByName = async (page: Page, words: string, heading: RegExp) => {
  await page.getByRole('combobox').fill(words)
  await page.locator('.count', { hasText: 'found' }).waitFor()
  await page.locator('[aria-selected="true"] .why').waitFor()
  await page.getByRole('combobox').press('Enter')
  await page.getByRole('heading', { level: 1, name: heading }).waitFor()
}

inChromium('from an empty library to the spring on the bench', ({ open, visit }) => {
  test('an empty library offers the first caliber or the demo, which Tab and Enter open', async () => {
    const { page } = await open()
    const keys = await keyboardOf(page)
    await page.getByRole('heading', { name: 'This library is empty' }).waitFor()
    expect(await page.getByRole('link', { name: 'Enter the first caliber' }).count()).toBe(1)
    await tabTo(page, 'button:not(.rail-item)')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Open the demo library')
    await keys.press('Enter')
    await page.getByText(`${demoCalibers} demo calibers are in the library.`).waitFor()
    await page.locator('#caliber-0').waitFor()
    expect(await page.locator('.count').textContent()).toBe(`${demoCalibers} calibers`)
    expect(await keys.mouse()).toBeNull()
  })

  test('opening the demo is taken back and done again', async () => {
    const { page } = await open()
    await page.getByRole('button', { name: 'Open the demo library' }).press('Enter')
    await page.locator('#caliber-0').waitFor()
    await page.keyboard.press('Control+z')
    await page.getByRole('heading', { name: 'This library is empty' }).waitFor()
    await page.getByText(/^Taken back: /).waitFor()
    await page.keyboard.press('Control+Shift+z')
    await page.getByText(/^Done again: /).waitFor()
    await page.locator('.count', { hasText: `${demoCalibers} calibers` }).waitFor()
  })

  test.each([
    ['17-220', '17-220', 'The designation is 17-220.'],
    ['17 220', '17-220', 'The designation is 17-220.'],
    ['17220', '17-220', 'The designation is 17-220.'],
    ["17'''", '17-220', "The size is 17'''."],
    ['verin', '17-220', 'Spelt nearly like Verrin.'],
    ['Fleuron 220', '17-220', 'Also known as Fleuron 220.'],
    ['verrin 17 220', '17-220', 'Maker and designation are Verrin 17-220.'],
  ])('typing %s finds %s and says why', async (words, name, why) => {
    const { page } = await open({ demo: true })
    expect(await search(page, words, name)).toBe(why)
  })

  test('the caliber page shows spring, beat, drawings in words and proofs with their working', async () => {
    const { page } = await open({ demo: true })
    await page.keyboard.press('/')
    await openByName(page, '17-220', /^Verrin 17-220$/)
    const bench = page.getByRole('region', { name: 'Spring and beat' })
    expect((await bench.locator('.hero').allTextContents()).map(plainly)).toEqual([
      '2.40 × 0.18 × 430 mm',
      '18 000 vph',
    ])
    expect(await page.getByRole('img', { name: /^Going train in plan\./ }).getAttribute('aria-labelledby')).toBeTruthy()
    const train = await page.locator('.train-plan title').textContent()
    expect(train).toContain('Barrel: 78 teeth')
    expect(train).toContain('Third: 10 leaves, 75 teeth')
    const barrel = await page.locator('.barrel-section title').first().textContent()
    expect(barrel).toMatch(/^Barrel to scale: inside 15 mm, hub 5 mm\. .*Turns of the barrel \d/)
    expect(await page.getByRole('img', { name: /^Barrel to scale/ }).count()).toBe(1)
    const beat = page.locator('[data-proof="beat-rate-follows-train"]')
    expect(await beat.getAttribute('data-outcome')).toBe('agrees')
    expect(plainly(await beat.locator('.working').first().textContent())).toBe('80/10 × 75/10 × 80/8 × 2 × 15 = 18 000')
    expect(await page.locator('.proofs [data-outcome="disagrees"]').count()).toBe(0)
    await page.getByText(/Order the mainspring that the maker specified/).waitFor()
  })

  test('a misprint in the demo shows which figures disagree, and leads to the field', async () => {
    const { page } = await open({ demo: true })
    await openByName(page, '8-310', /^Verrin 8-310$/)
    const against = page.locator('.proofs [data-outcome="disagrees"]')
    expect((await against.evaluateAll((all) => all.map((one) => one.getAttribute('data-proof')))).sort()).toEqual([
      'beat-rate-follows-train',
      'seconds-hand-turns-once-a-minute',
    ])
    const beat = page.locator('[data-proof="beat-rate-follows-train"]')
    const message = plainly(await beat.locator('.message').textContent())
    expect(message).toContain('13 680')
    expect(message).toContain('18 000')
    await beat.getByRole('link', { name: 'Third wheel' }).press('Enter')
    await page.locator('#cell-thirdWheel:focus').waitFor()
  })

  test('who begins to type before the list has been read goes on typing', async () => {
    const { page } = await open({ demo: true })
    await page.route('**/api/calibers.page', async (route) => {
      await new Promise((done) => setTimeout(done, 400))
      await route.continue()
    })
    await page.reload()
    await page.locator('#main h1').waitFor()
    await page.keyboard.press('/')
    await page.keyboard.type('17-220', { delay: 100 })
    expect(await page.getByRole('combobox').inputValue()).toBe('17-220')
    await page.locator('[aria-selected="true"]', { hasText: '17-220' }).waitFor()
  })

  test('Escape goes back to the list with the search as it was left', async () => {
    const { page } = await open({ demo: true })
    const field = page.getByRole('combobox')
    await field.fill('verrin')
    await page.locator('.count', { hasText: 'found' }).waitFor()
    await field.press('ArrowDown')
    await field.press('ArrowDown')
    const name = await page.locator('#caliber-2[aria-selected="true"] .designation').textContent()
    await field.press('Enter')
    await page.getByRole('heading', { level: 1, name: `Verrin ${name}` }).waitFor()
    await page.keyboard.press('Escape')
    await page.locator('#caliber-2[aria-selected="true"]').waitFor()
    expect(await field.inputValue()).toBe('verrin')
    expect(await page.locator('#caliber-2 .designation').textContent()).toBe(name)
  })

  test('the spring is copied as text', async () => {
    const { page } = await open({ demo: true, permissions: ['clipboard-read', 'clipboard-write'] })
    await openByName(page, '17-220', /^Verrin 17-220$/)
    await page.getByRole('button', { name: /^Copy/ }).press('Enter')
    await page.getByText(/^Copied: /).waitFor()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
      'Verrin 17-220: 2.40 × 0.18 × 430 × 15.0 mm, tongue',
    )
  })

  test('theme and text size are remembered', async () => {
    const { page } = await open({ demo: true, colorScheme: 'light' })
    const look = () =>
      page.evaluate(() => ({
        theme: document.documentElement.dataset.theme,
        px: Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
      }))
    const before = await look()
    expect(before.theme).toBe('day')
    const theme = page.getByRole('button', { name: /^Theme:/ })
    await theme.press('Enter')
    await theme.press('Enter')
    await expect.poll(async () => (await look()).theme).toBe('night')
    await page.locator('#caliber-list').focus()
    await page.keyboard.press('Control+=')
    const larger = await look()
    expect(larger.px).toBeGreaterThan(before.px)
    await page.reload()
    await page.locator('#caliber-0').waitFor()
    expect(await look()).toEqual(larger)
    expect(await page.getByRole('button', { name: 'Theme: Night bench' }).count()).toBe(1)
  })

  test('an address works once: a second page is told so', async () => {
    const { host } = await open({ demo: true })
    const address = host.newAddress()
    await visit(address)
    const second = await visit(address, { awaited: /403/ })
    await second
      .getByText(/not, or no longer, allowed to open the library/)
      .first()
      .waitFor()
  })
})
