import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { type Keyboard, keyboardOf } from './support/keyboard.ts'

/** A page of the Manuel des ébauches de la Sarelle as it is printed, in its own order; the caliber is invented. */
const handbookPage: readonly (readonly [cell: string, printed: string, letters?: string])[] = [
  ['maker', 'Hesselrode'],
  ['designation', '15-75'],
  ['alsoKnownAs', 'Reise 15'],
  ['firstYear', 'c. 1928'],
  ['shape', 'round', 'r'],
  ['diameterMm', "15'''", '15'],
  ['heightMm', '4,7'],
  ['secondsDisplay', 'small seconds', 's'],
  ['winding', 'stem', 'st'],
  ['setting', 'stem', 's'],
  ['hourHandMm', '1,65'],
  ['minuteHandMm', '0,98'],
  ['secondsHandMm', '0,25'],
  ['escapement', 'lever', 'l'],
  ['beatRateVph', "18'000"],
  ['liftAngleDeg', '52°'],
  ['balanceSpring', 'flat', 'f'],
  ['barrelTeeth', '78'],
  ['centrePinion', '12'],
  ['centreWheel', '80'],
  ['thirdPinion', '10'],
  ['thirdWheel', '75'],
  ['fourthPinion', '10'],
  ['fourthWheel', '80'],
  ['escapePinion', '8'],
  ['escapeTeeth', '15'],
  ['cannonPinion', '12'],
  ['minuteWheel', '36'],
  ['minutePinion', '10'],
  ['hourWheel', '40'],
  ['barrelInsideMm', '13,5'],
  ['barrelDepthMm', '2,1'],
  ['barrelArborMm', '4,5'],
  ['springHeightMm', '2,0'],
  ['springThicknessMm', '16/100'],
  ['springLengthMm', '395'],
  ['springEnd', 'tongue', 't'],
  ['springMaterial', 'carbon steel', 'c'],
  ['goingHours', '38 h'],
  ['jewelsStated', '15'],
]
const jewels = [
  ['balance', 'hole', '2'],
  ['balance', 'cap', '2'],
  ['balance', 'impulse', '1'],
  ['pallet', 'pallet stone', '2'],
  ['pallet', 'hole', '2'],
  ['escape', 'hole', '2'],
  ['fourth', 'hole', '2'],
  ['third', 'hole', '2'],
] as const

/** The fields in the order of the book, by the first letters of its own headings. */
const headings: readonly (readonly [field: string, letters: string])[] = [
  ['alsoKnownAs', 'autresn'],
  ['firstYear', 'premierea'],
  ['shape', 'forme'],
  ['diameterMm', 'diametre'],
  ['heightMm', 'hauteur'],
  ['secondsDisplay', 'secondes'],
  ['winding', 'remontoir'],
  ['setting', "miseal'heure"],
]

const cell = (page: Page, name: string) => page.locator(`#cell-${name}`)

/** The source and its page, by keyboard; then its fields are arranged, each found by its letters or by walking down. */
const beginSession = async (page: Page, keys: Keyboard) => {
  await page.locator('#caliber-0').waitFor()
  await keys.press('n')
  await page.locator('#cell-maker:focus').waitFor()
  await keys.press('Alt+0')
  await keys.type('manu')
  await keys.press('Enter')
  await page.locator('#cell-bar-page:focus').waitFor()
  await keys.type('83')
  await keys.press('Alt+a')
  await page.getByRole('listbox', { name: /Fields in the order of the book/ }).waitFor()
}
const standsAt = (page: Page) =>
  page.evaluate(() => document.querySelector('.arrange-list')?.getAttribute('aria-activedescendant')?.split('-').at(-1))

const arrangeAsPrinted = async (page: Page, keys: Keyboard) => {
  for (const [field, letters] of headings) {
    await keys.type(letters)
    expect(await standsAt(page)).toBe(field)
    await keys.press(' ')
  }
  for (const [field] of handbookPage.slice(10)) {
    for (let steps = 0; (await standsAt(page)) !== field; steps += 1) {
      if (steps > 60) throw new Error(`the arrows never came to ${field}`)
      await keys.press('ArrowDown')
    }
    await keys.press(' ')
  }
  await keys.type('Jewelsby')
  expect(await standsAt(page)).toBe('jewels')
  await keys.press(' ')
  await keys.press('Enter')
  await page.locator('dialog').waitFor({ state: 'detached' })
}

inChromium('a session with a handbook', ({ open }) => {
  test('a full page by keyboard alone, in the order of the book, in its unit; then the next caliber, a near name, a merge and its undo', async () => {
    const { page } = await open({ demo: true })
    const keys = await keyboardOf(page)
    await beginSession(page, keys)
    await arrangeAsPrinted(page, keys)
    await page.getByRole('heading', { name: /As Manuel des ébauches de la Sarelle prints it/ }).waitFor()
    console.log(`presses to begin the session and arrange the book, once: ${keys.count()}`)

    // The page, value after value.
    expect(await keys.cell()).toBe('bar.page')
    await keys.press('Enter')
    const before = keys.count()
    for (const [name, printed, letters] of handbookPage) {
      expect(await keys.cell()).toBe(name)
      await keys.type(letters ?? printed)
      if (name === 'diameterMm') {
        // 15 lignes of 2.2558 mm: law of 19 frimaire year VIII, as quoted in GNU units 2.22, definitions.units
        await page.locator('#cell-diameterMm-echo', { hasText: '33.84 mm' }).waitFor()
        expect(await cell(page, name).inputValue()).toBe('15')
      }
      await keys.press('Enter')
    }
    expect(await cell(page, 'diameterMm').inputValue()).toBe("15'''")
    expect(await cell(page, 'springLengthMm').inputValue()).toBe('395')
    for (const [line, cells] of jewels.entries()) {
      for (const [at, printed] of cells.entries()) {
        expect(await keys.cell()).toBe(`jewels.${line}.${['place', 'kind', 'count'][at]}`)
        await keys.type(printed === 'pallet stone' || printed === 'pallet' ? 'pal' : printed.slice(0, 2))
        await keys.press('Enter')
      }
    }
    await page.waitForFunction(() => document.querySelectorAll('.entry-proofs [data-outcome="agrees"]').length >= 6)
    expect(await page.locator('.entry-proofs [data-outcome="disagrees"]').count()).toBe(0)
    await keys.press('Enter')
    expect(await page.evaluate(() => document.activeElement?.textContent)).toMatch(/^Save and enter the next/)
    await keys.press('Enter')
    await page.getByText('Saved Hesselrode 15-75.').waitFor()

    const presses = keys.count() - before
    const prints = [...handbookPage.map(([, printed]) => printed), ...jewels.flat()]
    const goal = prints.reduce((sum, printed) => sum + printed.length + 1, 0)
    console.log(
      `key presses per value: ${(presses / prints.length).toFixed(2)} (${presses} for ${prints.length} values as printed; value length + 1 would be ${goal}, so ${presses - goal} beyond it)`,
    )
    expect(presses).toBeLessThanOrEqual(goal)

    // The next caliber keeps maker, source and page, and stands at its designation.
    await page.locator('#cell-designation:focus').waitFor()
    expect(await cell(page, 'maker').inputValue()).toBe('Hesselrode')
    expect(await cell(page, 'bar-page').inputValue()).toBe('83')
    await keys.press('Alt+PageDown')
    expect(await cell(page, 'bar-page').inputValue()).toBe('84')
    await keys.type('15-57')
    await page.getByText('Hesselrode 15-75 differs by one character.').waitFor()
    await keys.goOnTo('diameterMm')
    await keys.type('34 mm')
    await keys.press('Enter')
    expect(await cell(page, 'diameterMm').inputValue()).toBe('34 mm')
    await keys.press('Control+s')
    // The form has the same heading; only the caliber's own page has the command that follows.
    await page.locator('article.caliber h1', { hasText: 'Hesselrode 15-57' }).waitFor()

    // The two are one: merged from its page, looked at before, and parted again.
    await keys.press('Control+k')
    await keys.type('merge')
    await keys.press('Enter')
    await page.locator('.merge-found [role="option"]', { hasText: 'Hesselrode 15-75' }).waitFor()
    await keys.press('Enter')
    const diameter = page.locator('.merge-beside tr', { hasText: 'Diameter' })
    await diameter.waitFor()
    expect(await diameter.locator('td').allTextContents()).toEqual([
      '34 mm manuel-1931 p. 84',
      "15''' manuel-1931 p. 83",
    ])
    await page.locator('.merge-actions button:focus').waitFor()
    await keys.press('Enter')
    await page.getByText('Merged Hesselrode 15-75 into Hesselrode 15-57.').waitFor()
    await page.locator('.status-line', { hasText: '33 calibers' }).waitFor()
    await page.getByText(/Also known as .*15-75/).waitFor()
    await keys.press('Control+z')
    await page.locator('.status-line', { hasText: '34 calibers' }).waitFor()
    expect(await keys.mouse()).toBeNull()
  })

  test('without a unit of the source a bare size is millimetres, and a page that is no number is left alone', async () => {
    const { page } = await open({ demo: true })
    const keys = await keyboardOf(page)
    await page.locator('#caliber-0').waitFor()
    await keys.press('n')
    await page.locator('#cell-maker:focus').waitFor()
    await keys.press('Alt+0')
    await keys.type('own')
    await keys.press('Enter')
    await keys.type('44a')
    await keys.press('Alt+PageDown')
    expect(await cell(page, 'bar-page').inputValue()).toBe('44a')
    await page.getByText('Page 44a is left as it is').waitFor()
    await cell(page, 'diameterMm').focus()
    await keys.type('30')
    await keys.press('Enter')
    expect(await cell(page, 'diameterMm').inputValue()).toBe('30')
  })
})
