import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openPage, seriousFindings, serveLibrary, startChromium } from './support/lignebook-in-chromium.ts'

let browser: Browser
let folder: string
beforeAll(async () => {
  browser = await startChromium()
  folder = mkdtempSync(join(tmpdir(), 'lignebook-entry-'))
})
afterAll(async () => {
  await browser.close()
  rmSync(folder, { recursive: true, force: true })
})

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

/** No mouse: what is pressed is counted, and a mouse event anywhere fails the test. */
const keyboard = (page: Page) => {
  let presses = 0
  const press = async (key: string) => {
    presses += 1
    await page.keyboard.press(key)
  }
  const type = async (text: string) => {
    presses += text.length
    await page.keyboard.type(text)
  }
  const cell = () => page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset['cell'] ?? '')
  const goOnTo = async (wanted: string) => {
    for (let steps = 0; (await cell()) !== wanted; steps += 1) {
      if (steps > 60) throw new Error(`Enter never came to ${wanted}; it stands at ${await cell()}`)
      await press('Enter')
    }
  }
  return { press, type, goOnTo, cell, count: () => presses }
}

const outcomeOf = (page: Page, proof: string) =>
  page.locator(`.entry-proofs [data-proof="${proof}"]`).getAttribute('data-outcome')

test('a caliber is entered by keyboard alone, its wrong third wheel caught while typing, and found again', async () => {
  const host = await serveLibrary(join(folder, 'by-keyboard.sqlite'))
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } })
  const { page, errors } = await openPage(context, host.newAddress())
  await page.evaluate(() => {
    for (const kind of ['mousedown', 'pointerdown', 'touchstart'])
      addEventListener(kind, () => document.documentElement.setAttribute('data-mouse', kind), true)
  })
  const keys = keyboard(page)

  await page.locator('#main').waitFor()
  await page.getByText('Opening', { exact: false }).waitFor({ state: 'detached' })
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
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

  for (const [cell, text] of typed) {
    await keys.goOnTo(cell)
    await keys.type(text)
    if (cell === 'diameterMm') expect(await page.locator('#cell-diameterMm-echo').textContent()).toContain('38.35 mm')
    if (cell === 'springThicknessMm')
      expect(await page.locator('#cell-springThicknessMm-echo').textContent()).toContain('0.18 mm')
  }
  expect(await page.locator('#cell-setting').inputValue()).toBe('lever')
  expect(await page.locator('#cell-secondsDisplay').inputValue()).toBe('small')

  await page.locator('.entry-proofs [data-proof="beat-rate-follows-train"][data-outcome="disagrees"]').waitFor()
  expect(await page.locator('#cell-thirdWheel-proof').textContent()).toContain('Beat rate follows the train')

  await keys.press('Alt+5')
  await keys.press('Alt+4')
  await keys.goOnTo('thirdWheel')
  await keys.type('75')
  await page.locator('.entry-proofs [data-proof="beat-rate-follows-train"][data-outcome="agrees"]').waitFor()
  expect(await page.locator('#cell-thirdWheel-proof').count()).toBe(0)
  expect(await outcomeOf(page, 'hour-hand-follows-minute-hand')).toBe('agrees')

  // Taken back and done again.
  await keys.press('Control+z')
  expect(await page.locator('#cell-thirdWheel').inputValue()).toBe('57')
  await keys.press('Control+y')
  expect(await page.locator('#cell-thirdWheel').inputValue()).toBe('75')

  await keys.press('Control+s')
  await page.waitForURL(/#\/caliber\/\d+$/)
  await page.getByRole('heading', { name: /Aldervane 17-430/ }).waitFor()
  console.log(
    `key presses per value: ${(keys.count() / typed.length).toFixed(1)} (${keys.count()} for ${typed.length} values)`,
  )
  expect(await page.evaluate(() => document.documentElement.getAttribute('data-mouse'))).toBeNull()

  await page.reload()
  await page.getByRole('heading', { name: /Aldervane 17-430/ }).waitFor()
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
  await keys.press('/')
  await page.waitForFunction(() => document.activeElement instanceof HTMLInputElement)
  await keys.type('aldervan 17430')
  await page.getByText('17-430').first().waitFor()
  expect(errors).toEqual([])
  await context.close()
  await host.close()
})

test('a draft outlives a reload and a host that is gone, and discarding it can be taken back', async () => {
  const file = join(folder, 'drafts.sqlite')
  const first = await serveLibrary(file)
  const context = await browser.newContext()
  const { page } = await openPage(context, first.newAddress())
  await page.locator('#main').waitFor()
  await page.evaluate(() => {
    location.hash = '#/new'
  })
  await page.locator('#cell-maker:focus').waitFor()
  await page.keyboard.type('Brandsma')
  // Reloaded before the draft can have reached the library.
  await page.reload()
  await page.locator('#cell-maker:focus').waitFor()
  expect(await page.locator('#cell-maker').inputValue()).toBe('Brandsma')
  await page.getByText('Draft of Brandsma restored').waitFor()
  await page.keyboard.press('Enter')
  await page.keyboard.type('9-2')
  await page.locator('.entry-kept[data-keeping="kept"]').waitFor()
  await first.close()
  await page.close()

  const second = await serveLibrary(file)
  const again = await openPage(context, second.newAddress())
  await again.page.locator('#main').waitFor()
  await again.page.evaluate(() => {
    location.hash = '#/new'
  })
  await again.page.getByText('Draft of Brandsma 9-2 restored').waitFor()
  await again.page.getByRole('button', { name: 'Discard draft' }).press('Enter')
  expect(await again.page.locator('#cell-maker').inputValue()).toBe('')
  await again.page.getByRole('button', { name: 'Bring it back' }).press('Enter')
  expect(await again.page.locator('#cell-maker').inputValue()).toBe('Brandsma')
  await context.close()
  await second.close()
})

test('what cannot be read is not saved, is named with the way to it, and is not lost', async () => {
  const host = await serveLibrary(join(folder, 'unreadable.sqlite'))
  const context = await browser.newContext()
  const { page } = await openPage(context, host.newAddress())
  await page.locator('#main').waitFor()
  await page.evaluate(() => {
    location.hash = '#/new'
  })
  await page.locator('#cell-maker:focus').waitFor()
  await page.keyboard.type('Brandsma')
  await page.locator('#cell-thirdWheel').focus()
  await page.keyboard.type('7x5')
  await page.keyboard.press('Control+Enter')
  await page.locator('#entry-refusal:focus').waitFor()
  await page
    .locator('#entry-refusal')
    .getByRole('button', { name: /Third wheel/ })
    .press('Enter')
  await page.locator('#cell-thirdWheel:focus').waitFor()
  expect(await page.locator('#cell-thirdWheel').inputValue()).toBe('7x5')
  expect(await page.locator('#cell-thirdWheel').getAttribute('aria-invalid')).toBe('true')
  await context.close()
  await host.close()
})

test.each(['day', 'night'])('axe finds nothing serious in the form by %s', async (theme) => {
  const host = await serveLibrary(join(folder, `axe-${theme}.sqlite`))
  const context = await browser.newContext({ colorScheme: theme === 'night' ? 'dark' : 'light' })
  const { page } = await openPage(context, host.newAddress())
  await page.locator('#main').waitFor()
  await page.evaluate(() => {
    location.hash = '#/new'
  })
  await page.locator('#cell-maker:focus').waitFor()
  await page.locator('#cell-beatRateVph').fill('3000')
  await page.locator('#cell-thirdWheel').fill('7x5')
  await page.locator('#cell-maker').focus()
  await page.keyboard.press('F1')
  await page.locator('#cell-thirdWheel-problem').waitFor()
  expect(await seriousFindings(page)).toEqual([])
  await context.close()
  await host.close()
})
