import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { inChromium } from './support/in-chromium.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const goTo = (page: Page, hash: string) =>
  page.evaluate((place) => {
    location.hash = place
  }, hash)

const openCaliber = async (page: Page, host: { dispatch: Parameters<typeof createClient>[0] }, designation: string) => {
  const { hits } = await createClient(host.dispatch)('calibers.search', { words: designation })
  await goTo(page, `#/caliber/${hits[0]?.id}`)
  await page.getByRole('heading', { level: 1, name: new RegExp(designation) }).waitFor()
}

inChromium('the order list', ({ open }) => {
  test('a spring and a part go from their caliber to the list, are counted, marked, saved and printed', async () => {
    const { page, host } = await open({ demo: true })
    const client = createClient(host.dispatch)
    await openCaliber(page, host, '17-220')
    await page.getByRole('button', { name: /^Order: Put 2\.40 × 0\.18 × 430 mm/ }).click()
    await page.getByText(/^Put on the order list: /).waitFor()
    await page
      .locator('table')
      .getByRole('button', { name: /^Order: / })
      .first()
      .click()
    await expect.poll(async () => (await client('orders.list', {})).orders.length).toBe(2)

    await goTo(page, '#/orders')
    const spring = page.locator('.order-line').first()
    await spring.waitFor()
    expect(await spring.locator('.order-text').textContent()).toContain('2.40 × 0.18 × 430 mm')
    expect(await spring.textContent()).toContain('for Verrin 17-220')
    expect(await spring.textContent()).toMatch(/specified in .+, p\. 44/)
    await spring.getByRole('checkbox').focus()
    await page.keyboard.press('+')
    await expect.poll(() => spring.locator('output').textContent()).toBe('2')
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press(' ')
    await page.keyboard.press('o')
    await page.locator('.order-state[data-state="ordered"] .order-line').waitFor()
    expect(await page.locator('.order-state[data-state="open"] .order-line').count()).toBe(1)

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as CSV' }).click(),
    ])
    const { data } = Papa.parse<string[]>(readFileSync(await download.path(), 'utf8').replace(/^\ufeff/, ''), {
      skipEmptyLines: true,
    })
    expect(data).toHaveLength(3)
    expect(data[1]?.slice(0, 2)).toEqual(['2', 'spring'])
    expect((await page.pdf()).length).toBeGreaterThan(1000)

    await page.keyboard.press('Control+z')
    await expect.poll(() => page.locator('.order-state[data-state="open"] .order-line').count()).toBe(2)
  })

  test('a line of one’s own is added, refused while it says nothing, and removed', async () => {
    const { page } = await open({ demo: true })
    await goTo(page, '#/orders')
    await page.getByText('Nothing is on the list.').waitFor()
    await page.keyboard.press('a')
    await page.keyboard.press('Enter')
    await page.getByText('Say what is to be ordered.').waitFor()
    await page.keyboard.type('click spring')
    await page.keyboard.press('Enter')
    const line = page.locator('.order-line')
    await line.waitFor()
    await line.getByRole('checkbox').focus()
    await page.keyboard.press('Delete')
    await page.getByText('Nothing is on the list.').waitFor()
  })

  test('a spring that was received is booked into the tray', async () => {
    const { page, host } = await open({ demo: true })
    const client = createClient(host.dispatch)
    const spring = { heightMm: 1.5, thicknessMm: 0.105, lengthMm: 360 }
    const line = { kind: 'spring', what: '1.50 × 0.105 × 360 mm', spring, supplierRef: 'Z 9', quantity: 3 } as const
    await client('order.save', { id: null, line: { ...line, state: 'received' } })
    await goTo(page, '#/orders')
    await page.getByRole('button', { name: 'Book into the tray' }).click()
    await page.getByText('booked into the tray', { exact: true }).waitFor()
    const { springs } = await client('springs.all', {})
    expect(springs.find(({ supplierRef }) => supplierRef === 'Z 9')).toMatchObject({ ...spring, inStock: 3 })
  })

  test('nothing serious is found by axe, and nothing runs out of a narrow page', async () => {
    const { page, host } = await open({ demo: true })
    const client = createClient(host.dispatch)
    const line = { kind: 'part', what: 'click', number: '415', quantity: 1, state: 'open', tray: 'Sarelle' } as const
    await client('order.save', { id: null, line })
    await goTo(page, '#/orders')
    await page.locator('.order-line').waitFor()
    expect(await seriousFindings(page)).toEqual([])
    await page.setViewportSize({ width: 400, height: 800 })
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(400)
    expect(await page.locator('.page').evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0)
  })
})
