import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf } from './support/keyboard.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

/** Goes on by keys alone, with the list behind. */
const start = async (page: Page) => {
  const keys = await keyboardOf(page)
  await page.locator('#caliber-0').waitFor()
  await page.locator('#caliber-list').focus()
  return keys
}

const inBothThemes = async (page: Page) => {
  for (const theme of ['day', 'night']) {
    await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), theme)
    expect(await seriousFindings(page), theme).toEqual([])
  }
}

inChromium('sources, history and glossary', ({ open }) => {
  test('a source is added, changed and removed by keyboard alone, and each of it taken back', async () => {
    const { page } = await open({ demo: true })
    const keys = await start(page)
    await keys.press('u')
    await page.locator('.source-title:focus').waitFor()
    const before = await page.locator('.source').count()
    await keys.press('a')
    await page.locator('input[name="title"]:focus').waitFor()
    for (const text of ['Bench notes', 'B. Ruysch', '1950', '2nd', 'nl']) {
      await keys.type(text)
      await keys.press('Enter')
    }
    await keys.type('ligne')
    expect(await page.locator('input[name="key"]').inputValue()).toBe('ruysch-1950')
    await keys.press('Control+s')
    await page.locator('.source-title[data-key="ruysch-1950"]:focus').waitFor()
    const added = page.locator('.source', { has: page.locator('[data-key="ruysch-1950"]') })
    expect(await added.textContent()).toContain('B. Ruysch, 1950, 2nd edition, Dutch, printed in lignes')
    expect(await added.textContent()).toContain('nothing rests on it')
    expect(await page.locator('.source').count()).toBe(before + 1)

    await keys.press('Enter')
    await page.locator('input[name="title"]:focus').waitFor()
    await keys.press('End')
    await keys.type(' on watches')
    expect(await page.locator('input[name="key"]').getAttribute('readonly')).not.toBeNull()
    await inBothThemes(page)
    await keys.press('Control+s')
    await page.getByRole('button', { name: 'Bench notes on watches', exact: true }).waitFor()
    await page.locator('.source-title[data-key="ruysch-1950"]:focus').waitFor()
    await keys.press('Delete')
    await page.getByText('Removed Bench notes on watches. Ctrl Z brings it back.').waitFor()
    await added.waitFor({ state: 'detached' })
    await keys.press('Control+z')
    await page.getByText('Taken back: removal of source Bench notes on watches.').waitFor()
    await added.waitFor()
    expect(await keys.mouse()).toBeNull()
  })

  test('a source on which values rest is not removed, and they are shown with the way to each caliber', async () => {
    const { page } = await open({ demo: true })
    const keys = await start(page)
    await keys.press('u')
    await page.locator('.source-title[data-key]:focus').waitFor()
    const last = page.locator('.source-title').last()
    const title = await last.textContent()
    while (!(await last.evaluate((element) => element === document.activeElement))) await keys.press('ArrowDown')
    await keys.press('Delete')
    await page
      .getByRole('alert')
      .filter({ hasText: `${title} was not removed` })
      .waitFor()
    const uses = page.locator('.source-uses li')
    await uses.first().waitFor()
    expect(await uses.first().textContent()).toMatch(/wheel|pinion|rate|diameter|spring|\d+ values/i)
    await inBothThemes(page)
    await uses.first().getByRole('link').press('Enter')
    await page.locator('article.caliber').waitFor()
    expect(await keys.mouse()).toBeNull()
  })

  test('the history shows before and after, takes a change in the middle back, and says what is in the way', async () => {
    const { page } = await open({ demo: true })
    const keys = await start(page)
    const change = async (designation: string, wheel: string) => {
      await keys.press('/')
      await page.locator('.search input:focus').waitFor()
      await keys.type(designation)
      await page.locator('[aria-selected="true"]', { hasText: designation }).waitFor()
      await keys.press('Enter')
      await page.locator('article.caliber').waitFor()
      await keys.press('e')
      await page.locator('#cell-maker:focus').waitFor()
      await page.locator('#cell-thirdWheel').focus()
      await keys.press('Control+a')
      await keys.type(wheel)
      await keys.press('Control+s')
      await page.getByText(`Saved Verrin ${designation}.`).waitFor()
      await page.locator('article.caliber').waitFor()
      await keys.press('Escape')
      await page.locator('.search input').press('Escape')
      await page.locator('#caliber-list').focus()
    }
    await change('8-310', '75')
    await change('17-220', '57')

    await keys.press('h')
    await page.locator('.revision-line:focus').waitFor()
    expect(await page.locator('.revision-action').allTextContents()).toEqual([
      'Change of Verrin 17-220',
      'Change of Verrin 8-310',
      'Loading of the demo library',
    ])
    await keys.press('ArrowDown')
    await keys.press('Enter')
    const row = page.locator('.differences tr', { hasText: 'Third wheel' })
    await row.waitFor()
    expect(await row.locator('td').allTextContents()).toEqual([
      expect.stringMatching(/^57/),
      expect.stringMatching(/^75/),
    ])
    await inBothThemes(page)
    await keys.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Take this back')
    await keys.press('Enter')
    await page.getByText('Taking back of the change of Verrin 8-310: done.').waitFor()
    await page.getByRole('button', { name: 'Taking back of the change of Verrin 8-310' }).waitFor()
    await page.getByText('It cannot be taken back by itself: a later change builds on it.').waitFor()

    await keys.press('Control+k')
    await page.getByRole('option', { name: /Take back the taking back of the change of Verrin 8-310/ }).waitFor()
    await keys.press('Escape')
    await page.locator('.revision-line').last().press('Enter')
    await page.locator('.revision-changes li', { hasText: 'change of Verrin 17-220' }).waitFor()
    expect(await page.getByRole('button', { name: 'Take this back' }).count()).toBe(0)
    expect(await keys.mouse()).toBeNull()
  })

  test('a word is found in any language, its trap explained, and F1 twice leads there and Escape back', async () => {
    const { page } = await open({ demo: true })
    const keys = await start(page)
    await keys.press('w')
    await page.getByRole('textbox', { name: /^Find a word/ }).waitFor()
    await keys.type('MINUTENRAD')
    await page.locator('.count', { hasText: /^\d of/ }).waitFor()
    const first = page.locator('.term').first()
    // The list narrows with each letter, so the first term is looked at once the whole word has been heard.
    await first.locator('h2', { hasText: /^Centre wheel/ }).waitFor()
    expect(await first.textContent()).toContain('Minutenrad is the centre wheel')
    await keys.press('ArrowDown')
    await page.locator('#term-centreWheel:focus').waitFor()
    await inBothThemes(page)
    await keys.press('Escape')
    await page.getByText(/^\d+ words and \d+ proofs$/).waitFor()
    await keys.type('cliquet')
    await page.locator('.term').first().getByText('Sperrkegel').waitFor()

    await keys.press('Escape')
    await keys.press('Escape')
    await page.locator('#caliber-0').waitFor()
    await page.locator('#caliber-list').focus()
    await keys.press('n')
    await page.locator('#cell-maker:focus').waitFor()
    await keys.type('Brandsma')
    await page.locator('#cell-minuteWheel').focus()
    await keys.press('F1')
    await page.locator('.entry-names', { hasText: 'Wechselrad' }).waitFor()
    await keys.press('F1')
    await page.locator('#term-minuteWheel:focus').waitFor()
    await keys.press('Escape')
    await page.locator('#cell-minuteWheel:focus').waitFor()
    expect(await page.locator('#cell-maker').inputValue()).toBe('Brandsma')
    expect(await keys.mouse()).toBeNull()
  })
})
