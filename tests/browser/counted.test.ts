import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf } from './support/keyboard.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const openCounts = async (page: Page) => {
  await page.getByRole('combobox').fill('17-220')
  await page.locator('[aria-selected="true"]', { hasText: '17-220' }).waitFor()
  await page.getByRole('combobox').press('Enter')
  await page.locator('article.caliber').waitFor()
  await page.getByRole('link', { name: 'Counted on the bench' }).press('Enter')
  await page.locator('input[name="centreWheel"]:focus').waitFor()
}

inChromium('counted on the bench', ({ open }) => {
  test('a foreign third wheel is found by keys alone, with its working, and put back', async () => {
    const { page } = await open({ demo: true })
    const keys = await keyboardOf(page)
    await openCounts(page)
    await page.getByText('The train gives 18\u202f000, as specified.').waitFor()
    await keys.type('80')
    await keys.press('Enter')
    await keys.press('Enter')
    await page.locator('input[name="thirdWheel"]:focus').waitFor()
    await keys.type('76')
    await page.getByText('The third wheel, counted at 76 instead of 75, explains it').waitFor()
    const answer = page.locator('.counted-answer')
    expect(await answer.textContent()).toContain('80/10 × 76/10 × 80/8 × 2 × 15 = 18\u202f240')
    expect(await answer.textContent()).toContain('the hands lose 1136.8 s a day')
    expect(await answer.textContent()).toContain('With a third wheel of 75 again the train gives 18\u202f000')
    expect(await page.locator('tr[data-differs]').textContent()).toContain('✕ differs')

    await keys.press('Escape')
    await page.locator('article.caliber').waitFor()
    await page.getByRole('link', { name: 'Counted on the bench' }).press('Enter')
    await page.locator('input[name="centreWheel"]:focus').waitFor()
    expect(await page.locator('input[name="thirdWheel"]').inputValue()).toBe('76')
    await page.getByRole('button', { name: 'Clear' }).press('Enter')
    await page.getByText('The train gives 18\u202f000, as specified.').waitFor()
    expect(await keys.mouse()).toBeNull()
  })

  test('what was observed is explained by one part, and the seconds hand decides between them', async () => {
    const { page } = await open({ demo: true })
    await openCounts(page)
    await page.locator('input[name="handsGain"]').fill('-1137 s')
    await page.locator('.explanations h3').first().waitFor()
    expect(await page.locator('.explanations h3').first().textContent()).toBe(
      'A third wheel of 76 instead of 75 would explain it',
    )
    await page.locator('#seconds-hand').selectOption('true')
    await page.getByText('2 parts would explain the rate, but not what the seconds hand does.').waitFor()
    expect(await page.locator('.explanations h3').allTextContents()).toEqual([
      'A fourth wheel of 81 instead of 80 would explain it',
    ])
    await page.locator('input[name="handsGain"]').fill('-30')
    await page.getByText('within what the regulator takes up').waitFor()
  })

  test('a count that cannot be read is said so beside it, and the rest still answers', async () => {
    const { page } = await open({ demo: true, viewport: { width: 400, height: 800 } })
    await openCounts(page)
    await page.locator('input[name="escapeTeeth"]').fill('15.5')
    await page.locator('input[name="hourWheel"]').fill('38')
    await page.getByText('Escape teeth: "15.5" is not a whole number').waitFor()
    await page.getByText('An hour wheel of 40 again would make it true.').waitFor()
    await page.getByText('The train gives 18\u202f000, as specified.').waitFor()
    for (const theme of ['day', 'night']) {
      await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme)
      expect(await seriousFindings(page), theme).toEqual([])
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(
      0,
    )
  })
})
