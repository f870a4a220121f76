import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf } from './support/keyboard.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

const inBothThemes = async (page: Page) => {
  for (const theme of ['day', 'night']) {
    await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme)
    expect(await seriousFindings(page), theme).toEqual([])
  }
}

inChromium('rate and amplitude', ({ open }) => {
  test('is reached from the commands and answers by keys alone', async () => {
    const { page } = await open({ demo: true })
    const keys = await keyboardOf(page)
    await page.locator('#caliber-0').waitFor()
    await keys.press('Control+k')
    await keys.type('amplitude')
    await page.getByRole('option', { name: /Rate and amplitude/ }).waitFor()
    await keys.press('Enter')
    await page.locator('input[name="liftTimeMs"]:focus').waitFor()
    await page.getByText('Type the lift time.').waitFor()
    await keys.type('12')
    const answer = page.locator('.amplitudes')
    await answer.getByText('276.3°').waitFor()
    expect(await answer.textContent()).toContain('52° ÷ (2 × sin(180° × 18\u202f000 × 0.012 ÷ 7200)) = 276.28°')
    expect(await answer.textContent()).toContain('3600 × 52° ÷ (π × 18\u202f000 × 0.012) = 275.87°')
    await page.getByText('The usual formula reads 0.41° low.').waitFor()

    await keys.press('ArrowUp')
    await keys.type('8/s')
    await page.getByText('= 28\u202f800 vph').waitFor()
    await page.locator('.rate-forms', { hasText: '28\u202f800 ÷ 7200 = 4 Hz' }).waitFor()
    await keys.press('Escape')
    await page.locator('#caliber-0').waitFor()
    expect(await keys.mouse()).toBeNull()
  })

  test('opens with the figures of a caliber, and its lift times', async () => {
    const { page } = await open({ demo: true })
    await page.getByRole('combobox').fill('17-220')
    await page.locator('[aria-selected="true"]', { hasText: '17-220' }).waitFor()
    await page.getByRole('combobox').press('Enter')
    await page.locator('article.caliber').waitFor()
    await page.getByRole('link', { name: 'Amplitude' }).press('Enter')
    await page.getByRole('heading', { name: 'Lift times of Verrin 17-220' }).waitFor()
    expect(await page.locator('input[name="liftAngleDeg"]').inputValue()).toBe('52')
    expect(await page.locator('input[name="beatRateVph"]').inputValue()).toBe('18000')
    expect(await page.locator('.lift-tables tr', { hasText: '270°' }).first().textContent()).toContain('12.28 ms')
    expect(await page.locator('.lift-tables tr', { hasText: '51°' }).textContent()).toBe('51°264.8°−5.2°')
    await page.keyboard.press('Escape')
    await page.locator('article.caliber').waitFor()
  })

  test('says in one sentence what cannot be read or cannot be, and keeps it as typed', async () => {
    const { page } = await open({ demo: true })
    await page.evaluate(() => {
      location.hash = '#/rate'
    })
    const time = page.locator('input[name="liftTimeMs"]')
    await time.fill('12 mm')
    await page.getByText('Lift time: "12 mm" carries the unit "mm"').waitFor()
    expect(await time.inputValue()).toBe('12 mm')
    await time.fill('210')
    await page.getByText('A lift of 210 ms outlasts a whole vibration').waitFor()
    await time.fill('9')
    await page.getByText('would knock').waitFor()
  })

  test('sets balance, hairspring and rate against each other', async () => {
    const { page } = await open({ viewport: { width: 400, height: 800 } })
    await page.evaluate(() => {
      location.hash = '#/rate'
    })
    await page.locator('input[name="inertia"]').fill('16')
    await page.getByText('The hairspring must have 0.3948 µN·m a radian for this rate.').waitFor()
    await page.locator('input[name="stiffness"]').fill('0.4')
    await page.getByText('568.9 s a day faster than stated').waitFor()
    await page.locator('input[name="gain"]').fill('45')
    await page.getByText('0.104 % more inertia of the balance').waitFor()
    await page.locator('.rate-example summary').press('Enter')
    await page.getByText('369.16 ÷ 0.95² = 409 mg').waitFor()
    await inBothThemes(page)
    expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(
      0,
    )
  })
})
