import { expect, test } from 'vitest'
import { createClient } from '../../core/api/client.ts'
import { entryOf } from '../support/temporary-library.ts'
import { inChromium } from './support/in-chromium.ts'
import { keyboardOf } from './support/keyboard.ts'

inChromium('several readings of one value', ({ open, visit }) => {
  test('by keyboard alone one is chosen, the reason is noted, another is removed, and it is taken back', async () => {
    const { host } = await open()
    const call = createClient(host.dispatch)
    for (const [key, title] of [
      ['hb1', 'Sarelle handbook'],
      ['hb2', 'Verrin sheets'],
    ] as const)
      await call('source.save', { source: { key, title } })
    const entry = entryOf('Verrin', '17-220', { fourthWheel: '80' })
    entry.fields.thirdWheel = [
      { printed: '57', source: 'hb1', page: '44', chosen: true },
      { printed: '75', source: 'hb2', page: '9' },
      { printed: '74' },
    ]
    const { id } = await call('caliber.save', { caliberId: null, entry })

    const page = await visit(host.newAddress())
    const { press, type, cell, mouse } = await keyboardOf(page)
    await page.evaluate((caliber) => {
      location.hash = `#/caliber/${caliber}/edit/thirdWheel`
    }, id)
    const readings = page.locator('.entry-reading')
    await readings.first().waitFor()
    expect(await readings.allInnerTexts()).toEqual([
      expect.stringMatching(/57\s+Sarelle handbook, p\. 44/),
      expect.stringMatching(/75\s+Verrin sheets, p\. 9/),
      expect.stringMatching(/74\s+own entry/),
    ])
    await press('Alt+ArrowDown')
    expect(await page.locator('#cell-thirdWheel').inputValue()).toBe('75')
    await press('Alt+w')
    await type('counted on the watch')
    await press('Enter')
    expect(await cell()).toBe('thirdWheel')
    await press('Alt+ArrowDown')
    await press('Alt+Delete')
    expect(await readings.count()).toBe(2)
    await press('Control+z')
    expect(await readings.count()).toBe(3)
    await press('Control+y')
    expect(await readings.count()).toBe(2)
    expect(await page.locator('#cell-thirdWheel').inputValue()).toBe('75')
    await press('Control+s')

    const shown = page.locator('.value-cell', { hasText: 'Third wheel' })
    await shown.waitFor()
    expect(await shown.textContent()).toMatch(/75.*counted on the watch.*also 57/)
    expect(await mouse()).toBeNull()
    expect((await call('caliber.read', { id })).entry.fields.thirdWheel).toEqual([
      { printed: '57', source: 'hb1', page: '44', chosen: false },
      { printed: '75', source: 'hb2', page: '9', note: 'counted on the watch', chosen: true },
    ])
  })
})
