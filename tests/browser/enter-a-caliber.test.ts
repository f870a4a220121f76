import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf } from './support/keyboard.ts'

/** A made-up caliber as a handbook would print it; the third wheel is misprinted at first. */
const typed: readonly (readonly [cell: string, keys: string])[] = [
  ['maker', 'Aldervane'],
  ['designation', '17-430'],
  ['firstYear', '1926'],
  ['lastYear', '1938'],
  ['shape', 'ro'],
  ['diameterMm', "17'''"],
  ['heightMm', '4.2'],
  ['secondsDisplay', 'sm'],
  ['winding', 'st'],
  ['setting', 'l'],
  ['dialHours', '12'],
  ['hourHandMm', '1.50'],
  ['minuteHandMm', '0.90'],
  ['secondsHandMm', '0.25'],
  ['escapement', 'l'],
  ['beatRateVph', '18000'],
  ['liftAngleDeg', '50'],
  ['balanceSpring', 'o'],
  ['barrelTeeth', '80'],
  ['centrePinion', '10'],
  ['centreWheel', '80'],
  ['thirdPinion', '10'],
  ['thirdWheel', '57'],
  ['fourthPinion', '10'],
  ['fourthWheel', '80'],
  ['escapePinion', '8'],
  ['escapeTeeth', '15'],
  ['cannonPinion', '12'],
  ['minuteWheel', '36'],
  ['minutePinion', '10'],
  ['hourWheel', '40'],
  ['barrelInsideMm', '16'],
  ['barrelDepthMm', '1.70'],
  ['barrelArborMm', '5'],
  ['springHeightMm', '1.50'],
  ['springThicknessMm', '18/100'],
  ['springLengthMm', '480'],
  ['springEnd', 'h'],
  ['goingHours', '36'],
  ['jewelsStated', '15'],
  ['jewels.0.place', 'ba'],
  ['jewels.0.kind', 'h'],
  ['jewels.0.count', '2'],
  ['jewels.1.place', 'ba'],
  ['jewels.1.kind', 'c'],
  ['jewels.1.count', '2'],
]

const demoCalibers = 32

const outcomeOf = (page: Page, proof: string) =>
  page.locator(`.entry-proofs [data-proof="${proof}"]`).getAttribute('data-outcome')

/** Goes to an address of the page, as a link in it would. */
const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to
  }, hash)

const newForm = async (page: Page) => {
  await goTo(page, '#/new')
  await page.locator('#cell-maker:focus').waitFor()
}

/** Waits until the library has the last key stroke, and the window need not hold it any more. */
const allKept = async (page: Page) => {
  await page.waitForFunction(() => sessionStorage.getItem('lignebook.draft.new') === null)
  await page.locator('.entry-kept', { hasText: 'Draft kept' }).waitFor()
}

const cell = (page: Page, name: string) => page.locator(`#cell-${name}`)

const addSource = async (page: Page, title: string, author: string, year: string, pageNumber: string) => {
  await cell(page, 'bar-source').selectOption({ label: 'new source…' })
  await cell(page, 'bar-title').fill(title)
  await cell(page, 'bar-author').fill(author)
  await cell(page, 'bar-year').fill(year)
  await cell(page, 'bar-year').press('Enter')
  await page.locator('#cell-bar-page:focus').waitFor()
  await page.keyboard.type(pageNumber)
}

const findByWords = async (page: Page, words: string) => {
  await page.getByRole('combobox').fill(words)
  await page.locator('.count', { hasText: 'found' }).waitFor()
  return page.locator('[aria-selected="true"]', { hasText: '17-430' }).locator('.why')
}

inChromium('entering a caliber', ({ open, visit, serve, serveKillable, newFile }) => {
  test('by keyboard alone: the wrong third wheel is caught while typing, and the caliber found again after a new start', async () => {
    const file = newFile()
    const first = await serve(file, { demo: true })
    const page = await visit(first.newAddress())
    const keys = await keyboardOf(page)
    await page.locator('#caliber-0').waitFor()
    await keys.press('n')
    await page.locator('#cell-maker:focus').waitFor()

    // The source, once: back from the first field to the bar, 'new source…' by its first letters.
    await keys.press('Alt+0')
    await keys.type('new')
    await keys.press('Enter')
    await keys.type('Tables for the bench')
    await keys.press('Enter')
    await keys.type('A. Quellin')
    await keys.press('Enter')
    await keys.type('1931')
    await keys.press('Enter')
    await page.locator('#cell-bar-page:focus').waitFor()
    await keys.type('44')
    await keys.press('Enter')

    for (const [name, text] of typed) {
      await keys.goOnTo(name)
      await keys.type(text)
      if (name === 'diameterMm') expect(await cell(page, 'diameterMm-echo').textContent()).toContain('38.35 mm')
      if (name === 'springThicknessMm')
        expect(await cell(page, 'springThicknessMm-echo').textContent()).toContain('0.18 mm')
    }
    expect(await cell(page, 'setting').inputValue()).toBe('lever')
    expect(await cell(page, 'secondsDisplay').inputValue()).toBe('small')

    await page.locator('.entry-proofs [data-proof="beat-rate-follows-train"][data-outcome="disagrees"]').waitFor()
    expect(await cell(page, 'thirdWheel-proof').count()).toBe(1)

    await keys.press('Alt+5')
    await keys.press('Alt+4')
    await keys.goOnTo('thirdWheel')
    await keys.type('75')
    await page.locator('.entry-proofs [data-proof="beat-rate-follows-train"][data-outcome="agrees"]').waitFor()
    expect(await cell(page, 'thirdWheel-proof').count()).toBe(0)
    expect(await outcomeOf(page, 'hour-hand-follows-minute-hand')).toBe('agrees')

    // Taken back and done again.
    await keys.press('Control+z')
    expect(await cell(page, 'thirdWheel').inputValue()).toBe('57')
    await keys.press('Control+y')
    expect(await cell(page, 'thirdWheel').inputValue()).toBe('75')

    await keys.press('Control+s')
    await page.waitForURL(/#\/caliber\/\d+$/)
    await page.locator('article.caliber h1', { hasText: 'Aldervane 17-430' }).waitFor()
    console.log(
      `key presses per value: ${(keys.count() / typed.length).toFixed(1)} (${keys.count()} for ${typed.length} values)`,
    )
    expect(await keys.mouse()).toBeNull()

    await keys.press('/')
    await page.locator('.search input:focus').waitFor()
    expect(await (await findByWords(page, 'aldervan 17430')).textContent()).toBe(
      'Maker and designation are Aldervane 17-430.',
    )
    await first.close()

    // A new start has another port, so another origin: nothing the browser kept can help.
    const second = await serve(file)
    const again = await visit(second.newAddress())
    await again.locator('.count', { hasText: `${demoCalibers + 1} calibers` }).waitFor()
    expect(await (await findByWords(again, '17430')).textContent()).toBe('The designation is 17-430.')
    await again.keyboard.press('Enter')
    await again.locator('article.caliber h1', { hasText: 'Aldervane 17-430' }).waitFor()
    expect(await again.locator('.source-mark', { hasText: 'quellin-1931 p. 44' }).count()).toBeGreaterThan(10)
  })

  test('a draft outlives a reload and a host that is gone, and discarding it can be taken back', async () => {
    const file = newFile()
    const first = await serve(file)
    const page = await visit(first.newAddress())
    await newForm(page)
    await page.keyboard.type('Brandsma')
    // Reloaded before the draft can have reached the library.
    await page.reload()
    await page.locator('#cell-maker:focus').waitFor()
    expect(await cell(page, 'maker').inputValue()).toBe('Brandsma')
    await page.getByText('Draft of Brandsma restored').waitFor()
    await page.keyboard.press('Enter')
    await page.keyboard.type('9-2')
    await allKept(page)
    await page.close()
    await first.close()

    const second = await serve(file)
    const again = await visit(second.newAddress())
    await goTo(again, '#/new')
    await again.getByText('Draft of Brandsma 9-2 restored').waitFor()
    await again.getByRole('button', { name: 'Discard draft' }).press('Enter')
    expect(await cell(again, 'maker').inputValue()).toBe('')
    await again.getByRole('button', { name: 'Bring it back' }).press('Enter')
    expect(await cell(again, 'maker').inputValue()).toBe('Brandsma')
  })

  test('a host killed in the middle of typing costs at most the last key stroke', async () => {
    const file = newFile()
    const text = 'Brandsma und Soehne am Wehr zu Vaucourbe'
    const first = await serveKillable(file)
    const page = await visit(first.address, { awaited: /ERR_CONNECTION|Failed to load/ })
    await newForm(page)
    await page.keyboard.type(text, { delay: 60 })
    await first.kill()
    // The window says what it can no longer do, and goes on taking what is typed.
    await page.keyboard.type('.')
    await page.getByText('Draft not kept in the library: it cannot be reached. It is safe in this window').waitFor()
    expect(await cell(page, 'maker').inputValue()).toBe(`${text}.`)

    const second = await serveKillable(file)
    const again = await visit(second.address)
    await newForm(again)
    expect([text, text.slice(0, -1)]).toContain(await cell(again, 'maker').inputValue())
  })

  test('what cannot be read is not saved, is listed with the way to each field, and is not lost', async () => {
    const { page } = await open()
    await newForm(page)
    await page.keyboard.type('Brandsma')
    await cell(page, 'thirdWheel').fill('7x5')
    await cell(page, 'diameterMm').fill('6/0')
    await cell(page, 'diameterMm').press('Control+Enter')
    await page.locator('#entry-refusal:focus').waitFor()
    const refusal = page.locator('#entry-refusal')
    expect(await refusal.locator('p').textContent()).toMatch(
      /^Not saved: \d values cannot be read\. Nothing is lost\.$/,
    )
    expect(await refusal.getByRole('button', { name: /Diameter/ }).count()).toBe(1)
    await refusal.getByRole('button', { name: /Third wheel/ }).press('Enter')
    await page.locator('#cell-thirdWheel:focus').waitFor()
    expect(await cell(page, 'thirdWheel').inputValue()).toBe('7x5')
    expect(await cell(page, 'thirdWheel').getAttribute('aria-invalid')).toBe('true')
    await goTo(page, '#/')
    await page.getByRole('heading', { name: 'This library is empty' }).waitFor()
  })

  test('a name that the library has is said while typing, and is not saved twice', async () => {
    const { page } = await open({ demo: true })
    await newForm(page)
    await page.keyboard.type('verrin')
    await page.keyboard.press('Enter')
    await page.keyboard.type('17-220')
    await page.getByText('Verrin 17-220 is already in the library.').waitFor()
    await cell(page, 'maker').fill('Verrin')
    await page.keyboard.press('Control+s')
    await page.locator('#entry-refusal:focus').waitFor()
    expect(await page.locator('#entry-refusal').textContent()).toMatch(/^The library already has Verrin 17-220\./)
    expect(await cell(page, 'designation').inputValue()).toBe('17-220')
    await page.locator('.status-line', { hasText: `${demoCalibers} calibers` }).waitFor()
  })

  test('Escape leaves, keeps the draft and says so; the form opens with it again', async () => {
    const { page } = await open({ demo: true })
    await newForm(page)
    await page.keyboard.type('Brandsma')
    await page.keyboard.press('Escape')
    await page.locator('#caliber-0').waitFor()
    await page.getByText('What was typed of Brandsma is kept as a draft.').waitFor()
    await page.getByRole('link', { name: 'A draft is not saved yet' }).press('Enter')
    await page.getByText('Draft of Brandsma restored.').waitFor()
    expect(await cell(page, 'maker').inputValue()).toBe('Brandsma')
  })

  test('Alt T gives a value the source in hand, and Alt R adds what another source says', async () => {
    const { page } = await open()
    await newForm(page)
    await page.keyboard.type('Brandsma')
    await cell(page, 'designation').fill('9-2')
    await cell(page, 'barrelTeeth').fill('78')
    const row = page.locator('.entry-field', { has: page.locator('#cell-barrelTeeth') })
    expect(await row.locator('.entry-source').count()).toBe(0)

    await addSource(page, 'Tables for the bench', 'A. Quellin', '1931', '44')
    await cell(page, 'barrelTeeth').focus()
    await page.keyboard.press('Alt+t')
    await row.locator('.entry-source', { hasText: 'quellin-1931 p. 44' }).waitFor()

    await addSource(page, 'A second look', 'B. Ruysch', '1950', '7')
    await cell(page, 'barrelTeeth').focus()
    await page.keyboard.press('Alt+r')
    expect(await cell(page, 'barrelTeeth').inputValue()).toBe('')
    await page.keyboard.type('80')
    await row.locator('.entry-source', { hasText: 'ruysch-1950 p. 7' }).waitFor()
    expect(await row.locator('.entry-others').textContent()).toContain('+1 more')

    await page.keyboard.press('Control+s')
    await page.locator('article.caliber h1', { hasText: 'Brandsma 9-2' }).waitFor()
    const shown = page.locator('.value-cell', { hasText: 'Barrel teeth' })
    expect(await shown.locator('.value').textContent()).toBe('80')
    expect(await shown.locator('.other-reading').textContent()).toContain('also 78')
    expect(await shown.locator('.other-reading').textContent()).toContain('quellin-1931 p. 44')
  })

  test('a choice is typed as the handbook prints it, and what is no word of the trade changes nothing', async () => {
    const { page } = await open()
    await newForm(page)
    await page.keyboard.type('Brandsma')
    await cell(page, 'designation').fill('9-3')
    await cell(page, 'springEnd').focus()
    await page.keyboard.type('Loch')
    expect(await cell(page, 'springEnd').inputValue()).toBe('hole')
    await cell(page, 'springMaterial').focus()
    await page.keyboard.type('st')
    expect(await cell(page, 'springMaterial').inputValue()).toBe('stainless')
    await cell(page, 'winding').focus()
    await page.keyboard.type('kxz')
    expect(await cell(page, 'winding').inputValue()).toBe('')
    await page.keyboard.press('Control+s')
    await page.locator('article.caliber h1', { hasText: 'Brandsma 9-3' }).waitFor()
    const shown = page.locator('.value-cell', { hasText: 'Spring end' })
    expect(await shown.locator('.value').textContent()).toBe('hole')
  })

  test('Ctrl Backspace removes a line of a list, and undo brings it back', async () => {
    const { page } = await open()
    await newForm(page)
    await cell(page, 'parts-0-part').fill('mainspring')
    await cell(page, 'parts-1-part').fill('balance staff')
    await cell(page, 'parts-0-part').focus()
    await page.keyboard.press('Control+Backspace')
    expect(await cell(page, 'parts-0-part').inputValue()).toBe('balance staff')
    expect(await cell(page, 'parts-1-part').inputValue()).toBe('')
    await page.keyboard.press('Control+z')
    expect(await cell(page, 'parts-0-part').inputValue()).toBe('mainspring')
    expect(await cell(page, 'parts-1-part').inputValue()).toBe('balance staff')
  })
})
