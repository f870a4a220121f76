import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { entryOf } from '../support/temporary-library.ts'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf, tabTo } from './support/keyboard.ts'

// 80/10 × 90/10 × 80/8 × 2 × 15 = 21 600, not 18 000.
const wrong = entryOf('Verrin', '17-221', {
  beatRateVph: '18 000',
  centreWheel: '80',
  thirdPinion: '10',
  thirdWheel: '90',
  fourthPinion: '10',
  fourthWheel: '80',
  escapePinion: '8',
  escapeTeeth: '15',
})
const proof = 'beat-rate-follows-train'
const line = `.proof[data-proof="${proof}"]`
const button = `${line} .overrule-actions button`
const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to
  }, hash)
const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent ?? '')

inChromium('overruling a finding', ({ open, visit }) => {
  test('by keyboard alone it is accepted with a reason, undone, and taken back, on the page of the caliber', async () => {
    const { host } = await open()
    const call = createClient(host.dispatch)
    const { id } = await call('caliber.save', { caliberId: null, entry: wrong })
    const overrules = async () => (await call('caliber.read', { id })).entry.overrules
    const disagreeing = async () => (await call('library.status', {})).disagreeing
    const page = await visit(host.newAddress())
    const { press, type, mouse } = await keyboardOf(page)
    await goTo(page, `#/caliber/${id}`)
    await page.locator(line).waitFor()
    await tabTo(page, button)
    await press('Enter')
    await press('Enter')
    expect(await page.locator(`${line} [role="alert"]`).textContent()).toBe(
      'Say why: an overrule is kept with its reason.',
    )
    await type('The handbook has it so, and so it beats')
    await press('Escape')
    expect(await page.locator('.overrule-form').count()).toBe(0)
    expect(await focused(page)).toMatch(/^Overrule…/)
    expect(await overrules()).toBeUndefined()

    await press('Enter')
    await press('Tab')
    await type('The handbook has it so, and so it beats')
    await press('Enter')
    await page.locator(`${line} .overrule`).waitFor()
    expect(await page.locator(`${line} h3`).textContent()).toMatch(/Beat rate follows the train disagrees\s+accepted/)
    expect(await page.locator(`${line} .overrule`).textContent()).toBe(
      'Accepted: The handbook has it so, and so it beats.',
    )
    expect(await page.locator('.proofs .counts').textContent()).toMatch(/1 accepted/)
    expect(await page.locator('.proofs .counts').textContent()).not.toMatch(/disagree/)
    expect(await focused(page)).toMatch(/^Take the overrule back/)
    expect(await overrules()).toEqual([
      { proof, severity: 'accepted', reason: 'The handbook has it so, and so it beats', of: 'disagrees' },
    ])
    expect(await disagreeing()).toBe(0)

    await press('Control+z')
    await page.locator(`${line}.outcome-disagrees`).waitFor()
    expect([await overrules(), await disagreeing()]).toEqual([undefined, 1])
    await press('Control+y')
    await page.locator(`${line}.outcome-accepted`).waitFor()
    await tabTo(page, button)
    await press('Enter')
    await page.locator(`${line}.outcome-disagrees`).waitFor()
    expect(await focused(page)).toMatch(/^Overrule…/)
    expect(await overrules()).toBeUndefined()
    expect((await call('history.list', {})).revisions.map(({ action }) => action)).toEqual([
      'taking back of the overrule of “Beat rate follows the train” at Verrin 17-221',
      'overrule of “Beat rate follows the train” at Verrin 17-221',
      'entry of Verrin 17-221',
    ])
    expect(await mouse()).toBeNull()
  })

  test('in the form it is part of the entry, and a step that Ctrl Z takes back', async () => {
    const { host } = await open()
    const call = createClient(host.dispatch)
    const { id } = await call('caliber.save', { caliberId: null, entry: wrong })
    const page = await visit(host.newAddress())
    const { press, type, mouse } = await keyboardOf(page)
    await goTo(page, `#/caliber/${id}/edit/thirdWheel`)
    await page.locator('#cell-thirdWheel:focus').waitFor()
    const note = page.locator('#cell-thirdWheel-proof')
    expect(await note.textContent()).toMatch(/disagrees/)
    await tabTo(page, button)
    await press('Enter')
    await press('ArrowDown')
    await press('Tab')
    await type('Counted twice')
    await press('Control+Enter')
    await page.locator(`${line}.outcome-doubtful`).waitFor()
    expect(await page.locator(`${line} .overrule`).textContent()).toBe('Counts as doubtful: Counted twice.')
    expect(await focused(page)).toMatch(/^Take the overrule back/)
    expect(await note.textContent()).toMatch(/counts as doubtful/)
    expect((await call('caliber.read', { id })).entry.overrules).toBeUndefined()
    await press('Control+z')
    await page.locator(`${line}.outcome-disagrees`).waitFor()
    await press('Control+y')
    await page.locator(`${line}.outcome-doubtful`).waitFor()
    await press('Control+s')
    await page.locator('article.caliber').waitFor()
    expect((await call('caliber.read', { id })).entry.overrules).toEqual([
      { proof, severity: 'doubtful', reason: 'Counted twice', of: 'disagrees' },
    ])
    expect((await call('calibers.page', { offset: 0, limit: 10 })).rows).toMatchObject([{ disagree: 0, doubtful: 1 }])
    expect(await mouse()).toBeNull()
  })

  test('one whose finding has changed since says so and no longer counts; others are kept and can be taken back', async () => {
    const { host } = await open()
    const call = createClient(host.dispatch)
    const said = { severity: 'accepted', reason: 'Beats so.' } as const
    const overrules = [
      { proof, ...said, of: 'doubtful' as const },
      { proof: 'some-later-proof', ...said, of: 'disagrees' as const },
    ]
    const { id } = await call('caliber.save', { caliberId: null, entry: { ...wrong, overrules } })
    const page = await visit(host.newAddress())
    await goTo(page, `#/caliber/${id}`)
    await page.locator(`${line}.outcome-disagrees .overrule.lapsed`).waitFor()
    expect(await page.locator(`${line} .overrule`).textContent()).toBe(
      'Accepted: Beats so. The finding has changed since; look again.',
    )
    const [overrule, takeBack] = await page.locator(button).all()
    expect(await overrule?.textContent()).toMatch(/^Overrule…/)
    await takeBack?.click()
    await page.locator(`${line} .overrule`).waitFor({ state: 'detached' })
    const others = page.locator('.other-overrules')
    expect(await others.textContent()).toContain('some-later-proof')
    await others.getByRole('button').click()
    await others.waitFor({ state: 'detached' })
    expect((await call('caliber.read', { id })).entry).toEqual(wrong)
  })

  test('a draft that is not saved is neither lost nor passed over', async () => {
    const { host } = await open()
    const call = createClient(host.dispatch)
    const { id } = await call('caliber.save', { caliberId: null, entry: wrong })
    await call('draft.keep', { caliberId: id, entry: { ...wrong, parts: [{ part: 'click' }] } })
    const page = await visit(host.newAddress())
    await goTo(page, `#/caliber/${id}`)
    await page.locator(button).click()
    await page.locator('.overrule-reason textarea').fill('Beats so.')
    await page.locator('.overrule-form').getByRole('button', { name: 'Save' }).click()
    const refusal = page.locator(`${line} [role="alert"]`)
    await refusal.waitFor()
    expect(await refusal.textContent()).toBe(
      'Verrin 17-221 is being changed, and its draft is not saved. Save or discard the draft first.',
    )
    expect(await page.locator('.overrule-reason textarea').inputValue()).toBe('Beats so.')
    expect((await call('draft.read', { caliberId: id })).draft?.entry.parts).toEqual([{ part: 'click' }])
  })
})
