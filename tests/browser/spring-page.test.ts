import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { inChromium } from './support/in-chromium.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

inChromium('the spring of a caliber', ({ open }) => {
  test('from a cold start the spring is on the bench two key strokes after the name is typed, and is copied', async () => {
    const { page } = await open({ demo: true, permissions: ['clipboard-read', 'clipboard-write'] })
    await page.keyboard.press('/')
    await page.keyboard.type('17-220')
    await page.locator('[aria-selected="true"]', { hasText: '17-220' }).waitFor()
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { level: 1, name: 'Verrin 17-220' }).waitFor()
    expect(await page.getByText('2.40 × 0.18 × 430').first().isVisible()).toBe(true)
    await page.keyboard.press('s')
    await page.getByRole('heading', { level: 1, name: 'Spring of Verrin 17-220' }).waitFor()
    await page.keyboard.press('c')
    await page.getByText(/^Copied: /).waitFor()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('2.40 × 0.18 × 430')
  })

  test('a size is tried and put back, and one that cannot be is refused in a sentence', async () => {
    const { page, host } = await open({ demo: true })
    const { hits } = await createClient(host.dispatch)('calibers.search', { words: '17-220' })
    await page.evaluate((id) => {
      location.hash = `#/caliber/${id}/spring`
    }, hits[0]?.id)
    const thickness = page.locator('input[name="springThicknessMm"]')
    await thickness.waitFor()
    await thickness.fill('0,20')
    await page.getByText(/Tried with other sizes/).waitFor()
    expect(await page.locator('.torque').textContent()).toMatch(/23\.5 to 37\.2 % more/)
    await page.getByRole('button', { name: /Back to the specification/ }).click()
    expect(await thickness.inputValue()).toBe('0.18')
    await page.locator('input[name="barrelArborMm"]').fill('15')
    await page.getByRole('alert').filter({ hasText: 'leaves no room' }).waitFor()
  })

  test('a substitute is looked at and put on the order list, and a strip and a lost spring are judged', async () => {
    const { page, host } = await open({ demo: true })
    const client = createClient(host.dispatch)
    const { hits } = await client('calibers.search', { words: '17-220' })
    await page.evaluate((id) => {
      location.hash = `#/caliber/${id}/spring`
    }, hits[0]?.id)
    const first = page.locator('.spring-substitutes .tray-line').first()
    await first.waitFor()
    expect(await first.textContent()).toContain('as specified')
    await first.focus()
    await page.keyboard.press('Enter')
    await page.locator('.tray-open').getByRole('button', { name: 'Put on the order list' }).click()
    await expect.poll(async () => (await client('orders.list', {})).orders.length).toBe(1)
    const { orders } = await client('orders.list', {})
    expect(orders[0]).toMatchObject({ kind: 'spring', quantity: 1, caliber: { designation: '17-220' } })

    await page.locator('input[name="stripThickness"]').fill('0.20 0.202')
    await page.getByText(/thicker than specified: not the maker’s spring/).waitFor()
    await page.locator('input[name="lost-turns"]').fill('7')
    await page.locator('.lost-line').waitFor()
    expect(await page.locator('.lost-remarks').textContent()).toContain('For 7 theoretical turns')
  })

  test('nothing serious is found by axe, and nothing runs out of a narrow page', async () => {
    const { page, host } = await open({ demo: true })
    const { hits } = await createClient(host.dispatch)('calibers.search', { words: '17-220' })
    await page.evaluate((id) => {
      location.hash = `#/caliber/${id}/spring`
    }, hits[0]?.id)
    await page.locator('.spring-substitutes .tray-line').first().waitFor()
    expect(await seriousFindings(page)).toEqual([])
    await page.setViewportSize({ width: 400, height: 800 })
    expect(await page.locator('.page').evaluate((element) => element.scrollWidth - element.clientWidth)).toBe(0)
  })
})
