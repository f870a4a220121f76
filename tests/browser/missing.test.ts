import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { readEntry } from '../../core/record/read-entry.ts'
import { entryOf } from '../support/temporary-library.ts'
import { inChromium } from './support/in-chromium.ts'
import { seriousFindings } from './support/lignebook-in-chromium.ts'

// An 18 000 train of which the third wheel is lost: 80/10 × ?/10 × 80/8 × 2 × 15.
const train = {
  beatRateVph: '18 000',
  secondsDisplay: 'small',
  centreWheel: '80',
  thirdPinion: '10',
  fourthPinion: '10',
  fourthWheel: '80',
  escapePinion: '8',
  escapeTeeth: '15',
}
const heading = (page: Page) => page.locator('#missing-found')
const count = (page: Page, field: string) => page.locator(`.missing-count[data-field="${field}"]`)

inChromium('missing counts', ({ open }) => {
  const opened = async (fields: Record<string, string>) => {
    const { host, page } = await open()
    const call = createClient(host.dispatch)
    const { id } = await call('caliber.save', { caliberId: null, entry: entryOf('Verrin', '17-220', fields) })
    await page.evaluate((caliber) => {
      location.hash = `#/caliber/${caliber}`
    }, id)
    await page.locator('article.caliber h1', { hasText: '17-220' }).waitFor()
    await page.keyboard.press('m')
    await page.getByRole('heading', { level: 1, name: 'Missing counts' }).waitFor()
    return { page, id, call }
  }

  test('a lost wheel is found with its working, taken over by the keyboard, and taken back', async () => {
    const { page, id, call } = await opened(train)
    await expect.poll(() => heading(page).textContent()).toBe('One answer fits: third wheel 75.')
    expect(await page.locator('.missing-why').textContent()).toMatch(/80.*75.*18/)
    await page.getByRole('button', { name: 'Take over third wheel 75' }).focus()
    await page.keyboard.press('Enter')
    await page.locator('[data-proof="beat-rate-follows-train"][data-outcome="agrees"]').waitFor()
    const [reading] = (await call('caliber.read', { id })).entry.fields.thirdWheel ?? []
    expect(reading?.printed).toBe('75')
    expect(reading?.note).toMatch(/^worked out from the seconds hand .* and the beat rate 18.000 vph$/u)
    await page.keyboard.press('Control+z')
    await expect
      .poll(async () => readEntry((await call('caliber.read', { id })).entry).caliber.values.thirdWheel)
      .toBeUndefined()
  })

  test('a count is made unknown by a press; several answers, none, and nothing to look for are said plainly', async () => {
    const { page } = await opened({ ...train, thirdWheel: '75' })
    await expect.poll(() => heading(page).textContent()).toMatch(/^No count is missing\./)
    await count(page, 'thirdWheel').click()
    await expect.poll(() => heading(page).textContent()).toBe('One answer fits: third wheel 75.')
    await count(page, 'fourthPinion').click()
    await expect.poll(() => heading(page).textContent()).toBe('10 answers fit, the most customary first.')
    expect(await page.locator('.missing-answer').first().textContent()).toMatch(/Third wheel75Fourth pinion10/)
    await page.getByText('Count the fourth pinion: 6, 8, 10').waitFor()
    await count(page, 'thirdWheel').click()
    await count(page, 'fourthPinion').click()
    await expect.poll(() => heading(page).textContent()).toMatch(/^Nothing is looked for\./)
    await count(page, 'hourWheel').click()
    await expect.poll(() => heading(page).textContent()).toBe('This cannot be worked out yet.')
    await page.getByText('cannot be worked out. State them, or look for them too.').waitFor()
  })

  test('where none fits the nearest are told with their error', async () => {
    const { page } = await opened({ ...train, thirdWheel: '75', fourthWheel: '', escapePinion: '7', escapeTeeth: '16' })
    await expect.poll(() => heading(page).textContent()).toMatch(/^No whole number of teeth that is cut fits/)
    await page.getByText(/Fourth wheel 66 gives .* 493\.7 s a day more than stated\./u).waitFor()
    expect(await page.getByRole('button', { name: /^Take over/ }).count()).toBe(0)
  })

  test('what was printed stays beside what is taken over, and a draft is not run over', async () => {
    const { page, id, call } = await opened({ ...train, thirdWheel: '57' })
    await count(page, 'thirdWheel').click()
    const entry = entryOf('Verrin', '17-220', train)
    await call('draft.keep', { caliberId: id, entry })
    const take = page.getByRole('button', { name: 'Take over third wheel 75' })
    await take.click()
    await page.getByRole('alert').getByText('its draft is not saved').waitFor()
    await call('draft.discard', { caliberId: id })
    await take.click()
    await page.locator('[data-proof="beat-rate-follows-train"][data-outcome="agrees"]').waitFor()
    const readings = (await call('caliber.read', { id })).entry.fields.thirdWheel ?? []
    expect(readings.map(({ printed, chosen }) => [printed, chosen === true])).toEqual([
      ['57', false],
      ['75', true],
    ])
  })

  test('it stands on a narrow page, in large letters and in both themes', async () => {
    const { page } = await opened(train)
    await count(page, 'fourthPinion').click()
    await expect.poll(() => heading(page).textContent()).toMatch(/^10 answers/)
    expect(await seriousFindings(page)).toEqual([])
    for (const [width, size] of [
      [400, 1],
      [1280, 2],
    ] as const) {
      await page.setViewportSize({ width, height: 800 })
      await page.evaluate((share) => {
        document.documentElement.style.fontSize = `${share * 93.75}%`
      }, size)
      expect(
        await page.evaluate(() =>
          ['.page', '.missing-page'].map((one) => {
            const { scrollWidth = 0, clientWidth = 0 } = document.querySelector(one) ?? {}
            return scrollWidth - clientWidth
          }),
        ),
      ).toEqual([0, 0])
    }
  })
})
