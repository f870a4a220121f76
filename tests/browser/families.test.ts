import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { entryOf } from '../support/temporary-library.ts'
import { inChromium } from './support/in-chromium.ts'

// An 18 000 train: 80/10 × 75/10 × 80/8 × 2 × 15.
const train = {
  beatRateVph: '18 000',
  centreWheel: '80',
  thirdPinion: '10',
  thirdWheel: '75',
  fourthPinion: '10',
  fourthWheel: '80',
  escapePinion: '8',
  escapeTeeth: '15',
}

inChromium('a variant and its base', ({ open, visit }) => {
  test('what a variant has from its base is shown as such and proved', async () => {
    const { host } = await open()
    const call = createClient(host.dispatch)
    const jewels = [{ place: 'balance', kind: 'hole', count: 2 }]
    await call('caliber.save', { caliberId: null, entry: entryOf('Verrin', '17-220', train, { jewels }) })
    const variant = entryOf('Verrin', '17-221', { basedOn: '17-220', fourthWheel: '70' })
    const { id } = await call('caliber.save', { caliberId: null, entry: variant })

    const page = await visit(`${host.newAddress()}`)
    await page.evaluate((caliber) => {
      location.hash = `#/caliber/${caliber}`
    }, id)
    await page.locator('article.caliber h1', { hasText: '17-221' }).waitFor()
    const third = page.locator('.value-cell.inherited', { hasText: 'Third wheel' })
    await third.waitFor()
    expect(await third.textContent()).toMatch(/75.*from 17-220/)
    expect(await page.locator('.value-cell.inherited', { hasText: 'Fourth wheel' }).count()).toBe(0)
    expect(await page.locator('.list-jewels h2').textContent()).toContain('from 17-220')
    const kept = page.locator('[data-proof="variant-keeps-its-base"]')
    expect(await kept.getAttribute('data-outcome')).toBe('doubtful')
    expect(await kept.textContent()).toContain('fourth wheel 70 against 80')

    const rate = page.locator('[data-proof="beat-rate-follows-train"]')
    expect(await rate.textContent()).toContain('A misprint? Fourth wheel 80 instead of 70 gives 18')

    await page.evaluate((caliber) => {
      location.hash = `#/caliber/${caliber}/edit`
    }, id)
    await page.locator('[data-proof="variant-keeps-its-base"][data-outcome="doubtful"]').waitFor()
    const inherited = page.locator('.entry-field', { has: page.locator('#cell-thirdWheel') })
    expect(await page.locator('#cell-thirdWheel').getAttribute('placeholder')).toBe('75')
    expect(await inherited.textContent()).toContain('from 17-220')
    await page.locator('#cell-thirdWheel').fill('74')
    expect(await inherited.textContent()).not.toContain('from 17-220')
  })

  test('base and variants lead to each other, and a change of the base says what else it changes', async () => {
    const { host } = await open()
    const call = createClient(host.dispatch)
    const { id } = await call('caliber.save', { caliberId: null, entry: entryOf('Verrin', '17-220', train) })
    for (const designation of ['17-221', '17-222'])
      await call('caliber.save', { caliberId: null, entry: entryOf('Verrin', designation, { basedOn: '17-220' }) })

    const page = await visit(host.newAddress())
    await page.evaluate((caliber) => {
      location.hash = `#/caliber/${caliber}`
    }, id)
    const family = page.locator('.family')
    await family.getByText('2 variants follow it: 17-221, 17-222.').waitFor()
    await family.getByRole('link', { name: '17-222' }).click()
    await page.locator('article.caliber h1', { hasText: '17-222' }).waitFor()
    await family.getByRole('link', { name: '17-220' }).click()
    await page.locator('article.caliber h1', { hasText: '17-220' }).waitFor()

    await page.keyboard.press('e')
    const affected = page.locator('.entry-variants')
    await page.locator('#cell-thirdWheel').fill('57')
    await affected.getByText('Two variants inherit the third wheel: 17-221, 17-222.').waitFor()
    expect(await affected.textContent()).toContain('17-221 would then disagree in Beat rate follows the train.')
    await page.locator('#cell-thirdWheel').fill('75')
    await expect.poll(() => affected.textContent()).toBe('')
  })
})
